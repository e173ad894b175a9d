using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>Before the first hold with the head below the heart: one question in plain words, and the way down.</summary>
internal static class HeadDownPage
{
    public static Page Draw(Session s, Ticking p, PageSize size) =>
        (new TextPage("BEFORE THE FIRST HEAD-DOWN HOLD", [WayDown.Question, .. WayDown.Against.Select(a => $"- {a}"), .. WayDown.Steps.Select((step, i) => $"- {i + 1}. {step}"), WayDown.StopIf]) with
        {
            MovedOn = p.MovedOn,
            Said = SessionPages.Told(s),
            Hints = [new("1", "none; I know the way down", "none, go on"), new("ENTER", "floor instead, today", "floor today"), new("*", "one of these: floor from now on", "one is so: floor"), Hint.Undo(s)],
        }).Draw(size);
}
