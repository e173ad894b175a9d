using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>The safety questions on one page; a tick says yes, and the same key takes it back.</summary>
internal static class SafetyPage
{
    private static readonly int Count = SafetyQuestion.All.Count;

    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("safety"),
        [.. SafetyQuestion.All.Select(q => new ListLine(q.Text, state.Yes.Contains(q.Topic)))],
        state.Line)
    {
        Place = SetUpHints.Place(state),
        Above = ["Is any of these true of you? A tick says yes."],
        Hints = [SetUpHints.GoOn, SetUpHints.Tick(Count), SetUpHints.Move, SetUpHints.Back, SetUpHints.StopSigns],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        _ when key.IsAccept() => new(state.GoOn()),
        _ when ListPage.Tick(key, state.Line, Count) is { } line => new(Toggle(state, line)),
        _ when ListPage.Move(key, state.Line, Count) is { } line => new(state with { Line = line }),
        _ => SetUpTurn.Refused(state),
    };

    private static SetUpState Toggle(SetUpState state, int line)
    {
        var topic = SafetyQuestion.All[line].Topic;
        return state with { Line = line, Yes = state.Yes.Contains(topic) ? state.Yes.Remove(topic) : state.Yes.Add(topic) };
    }
}
