namespace RackSide.Commands;

/// <summary>Looks at what decides how glyphs are drawn. Whether the font has them only an eye can tell, so they are shown.</summary>
internal static class FontFinding
{
    private const string Shown = "these should be a block, a shade, a square and two lines: \u2588 \u2591 \u25A0 \u2500 \u2502";

    /// <summary>What was found.</summary>
    public static Finding Of(Surroundings around)
    {
        var (name, value) = new[] { "LC_ALL", "LC_CTYPE", "LANG" }.Select(n => (n, around.Environment(n))).FirstOrDefault(v => !string.IsNullOrEmpty(v.Item2));
        var utf8 = value is null || !value.Contains('.', StringComparison.Ordinal)
            || value.Contains("UTF-8", StringComparison.OrdinalIgnoreCase) || value.Contains("utf8", StringComparison.OrdinalIgnoreCase);
        return utf8
            ? new Finding("font", $"{Shown}; if not, choose another font for this terminal or console")
            : new Finding("font", $"{name} is {value}, which is not UTF-8") { Look = true, Remedy = "set LANG=C.UTF-8, or lines and blocks come out as other signs" };
    }
}
