using System.Diagnostics;
using RackSide.Pages.LookBacks;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

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
            Leaf.TodaysPlan => new TextPage("TODAY'S PLAN", [.. TodaysPlan(s, size)]),
            Leaf.LookBack => new TextPage("LOOK BACK", [.. LookLines.Back(s)]) { Picture = Chart(s, size) },
            Leaf.LookAhead => new TextPage("LOOK AHEAD", [.. LookLines.Ahead(s)]),
            Leaf.Help => new TextPage("THE KEYS", [.. HelpLines.For(BodyText.Width(size))]),
            _ => throw new UnreachableException(),
        };
        return (page with { MovedOn = p.MovedOn, Place = ChoicePage.Corner(s, p.Under), Said = SessionPages.Told(s), Hints = Hints(p.What) }).Draw(size);
    }

    private static IReadOnlyList<KeyHint> Hints(Leaf what) => what == Leaf.TodaysPlan
        ? [new("ENTER", "back to the session"), new("1-9", "do that one next", "do next")]
        : [new("ENTER", "back to the session")];

    private static IReadOnlyList<BodyLine> Chart(Session s, PageSize size) =>
        LookLines.InHand(s) is { } item && new ExerciseCourse(s.Setting.Catalogue[item.Asked.Exercise], [.. s.Setting.Before.Of(item.Asked.Exercise)], s.Setting.WeighIns) is { Done.Count: > 1 } course
            ? LookBackPage.Chart(course, CourseOf.Load, size)
            : [];

    /// <summary>Each slot in the order it comes; what can be done next has the digit that says so.</summary>
    private static IEnumerable<string> TodaysPlan(Session s, PageSize size)
    {
        var ahead = Ordering.Ahead(s).Select(p => p.Slot).ToList();
        foreach (var asked in s.Place.Prescriptions)
        {
            var mark = ahead.IndexOf(asked.Slot) is var i and >= 0 ? $"{i + 1}" : s.Place.LeftOut.Contains(asked.Slot) ? "-" : "x";
            var lines = PlanLines.Of(s.Setting.Catalogue, asked, size).ToList();
            yield return $"{mark} {lines[0]}";
            foreach (var line in lines.Skip(1))
            {
                yield return $"  {line}";
            }
        }
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
