using System.Diagnostics;
using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Something to read over a session; the clock goes on in the corner and any key goes back.</summary>
internal static class LeafPage
{
    public static void Draw(Canvas canvas, Session s, Reading p)
    {
        Frame.Header(canvas, Title(s, p.What), ChoicePage.Corner(s, p.Under));
        var (size, margin, row) = (canvas.Size, canvas.Size.Compact ? 0 : 2, Frame.Top(canvas.Size));
        var lines = Lines(s, p.What, size.Columns - (2 * margin)).ToList();
        var gap = !size.Compact && p.What == Leaf.CueCard ? 2 : 1;
        foreach (var (line, i) in lines.Select((l, i) => (l, i)).Where(l => row + (l.i * gap) < Frame.Bottom(size)))
        {
            canvas.Write(margin, row + (i * gap), Frame.Fit(line, size.Columns - margin));
        }

        canvas.Cursor(margin, row);
        Frame.Keys(canvas, new KeyHint("any key", "back to the session"));
    }

    private static string Title(Session s, Leaf what) => what switch
    {
        Leaf.CueCard when s.Place.Current is SlotItem item => s.Setting.Catalogue[item.Asked.Exercise].Name.ToUpperInvariant(),
        Leaf.CueCard => "CUE CARD",
        Leaf.TodaysPlan => "TODAY'S PLAN",
        Leaf.Help => "THE KEYS",
        Leaf.StopSigns => "STOP SIGNS",
        _ => throw new UnreachableException(),
    };

    private static IEnumerable<string> Lines(Session s, Leaf what, int width) => what switch
    {
        Leaf.CueCard => Cues(s),
        Leaf.TodaysPlan => s.Record.Prescriptions.SelectMany(a => PlanLines.Of(s.Setting.Catalogue, a, width)),
        Leaf.Help => HelpLines.For(width),
        Leaf.StopSigns => StopSigns.All.Select(x => $"- {x}").Append("").Concat(StopSigns.WhatToDo.SelectMany(x => Frame.Wrap(x, width))),
        _ => throw new UnreachableException(),
    };

    private static IEnumerable<string> Cues(Session s)
    {
        if (s.Place.Current is not SlotItem item)
        {
            return [];
        }

        var cues = s.Setting.Catalogue[item.Asked.Exercise].Cues;
        return [$"set-up   {cues.SetUp}", $"down     {cues.WayDown}", $"up       {cues.WayUp}", $"fault    {cues.Fault}", $"stop if  {cues.StopIf}"];
    }
}
