using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>The safety questions on one page; a digit says yes, and yes again takes it back.</summary>
internal static class SafetyPage
{
    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("safety"),
        [.. SafetyQuestion.All.Select(q => new ListLine(q.Text, state.Yes.Contains(q.Topic)))],
        state.Line)
    {
        Place = SetUpHints.Place(state),
        Question = "Is one true of you? Its digit says yes.",
        Hints = [SetUpHints.GoOn, new($"1-{SafetyQuestion.All.Count}", "yes, or no"), SetUpHints.Back, SetUpHints.StopSigns],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        _ when key.IsAccept() => new(state.GoOn()),
        _ when key.Digit() is { } digit && digit >= 1 && digit <= SafetyQuestion.All.Count => new(Toggle(state, digit - 1)),
        _ => SetUpTurn.Refused(state),
    };

    private static SetUpState Toggle(SetUpState state, int line)
    {
        var topic = SafetyQuestion.All[line].Topic;
        return state with { Line = line, Yes = state.Yes.Contains(topic) ? state.Yes.Remove(topic) : state.Yes.Add(topic) };
    }
}
