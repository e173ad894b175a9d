namespace RackSide.Reports;

/// <summary>How a report looks: black on white, one sheet of A4, grey as the only other tint, so that any printer will do.</summary>
internal static class Styles
{
    /// <summary>The style sheet.</summary>
    public const string Text = """

        @page { size: A4; margin: 12mm; }
        body { margin: 0; background: #eee; color: #000; font: 10.5pt/1.35 sans-serif; }
        main { box-sizing: border-box; width: 186mm; margin: 6mm auto; padding: 8mm; background: #fff; }
        h1 { font-size: 17pt; margin: 0 0 1mm; } h2 { font-size: 11.5pt; margin: 4mm 0 1mm; }
        p { margin: 0 0 1.5mm; } .small { font-size: 8.5pt; color: #333; }
        table { border-collapse: collapse; width: 100%; } th { text-align: left; font-weight: bold; }
        th, td { padding: 0.8mm 2mm 0.8mm 0; border-bottom: 0.2mm solid #999; vertical-align: top; }
        td.number, th.number { text-align: right; padding-right: 5mm; } .sets { white-space: nowrap; } .charts { display: flex; flex-wrap: wrap; gap: 2mm 5mm; }
        figure { margin: 0; width: 82mm; } figcaption { font-size: 9pt; font-weight: bold; } svg { display: block; width: 100%; height: auto; }
        .box { display: inline-block; width: 11mm; height: 7mm; border: 0.3mm solid #000; margin-right: 2mm; vertical-align: middle; }
        @media print { body { background: #fff; } main { margin: 0; padding: 0; } }
        
        """;
}
