using System.Diagnostics;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Something to read over a session; the clock goes on in the corner and any key goes back.</summary>
internal static class LeafPage
{
    public static Page Draw(Session s, Reading p, PageSize size)
    {
        if (p.What == Leaf.StopSigns)
        {
            return StopSignsPage.Draw(size, p.MovedOn);
        }

        var page = p.What switch
        {
            Leaf.CueCard => CueCard(s),
            Leaf.TodaysPlan => new TextPage("TODAY'S PLAN", [.. s.Place.Prescriptions.SelectMany(a => PlanLines.Of(s.Setting.Catalogue, a, size))]),
            Leaf.Help => new TextPage("THE KEYS", [.. HelpLines.For(BodyText.Width(size))]),
            _ => throw new UnreachableException(),
        };
        return (page with { MovedOn = p.MovedOn, Place = ChoicePage.Corner(s, p.Under), Hints = [new("ENTER", "back to the session")] }).Draw(size);
    }

    private static TextPage CueCard(Session s)
    {
        if (s.Place.Current is not SlotItem item)
        {
            return new TextPage("CUE CARD", ["No exercise is in hand."]);
        }

        var exercise = s.Setting.Catalogue[item.Asked.Exercise];
        var cues = exercise.Cues;
        return new TextPage(
            exercise.Name.ToUpperInvariant(),
            [$"set-up   {cues.SetUp}", $"{(exercise.Held ? "hold  " : "down  ")}   {cues.WayDown}", $"{(exercise.Held ? "out   " : "up    ")}   {cues.WayUp}", $"fault    {cues.Fault}", $"stop if  {cues.StopIf}"]);
    }
}
