using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>What is said to one "yes". Enter says that it was read; nothing is locked.</summary>
internal static class AdvicePage
{
    private const string Kept = "Nothing is locked. RackSide keeps that advice was read, and not which.";

    public static TextPage View(SetUpState state)
    {
        var question = SafetyQuestion.Of(state.Yes[state.AdviceShown]);
        return new TextPage(SetUpHints.Title("advice"), [$"You said yes to: {question.Text}.", question.Advice, Kept])
        {
            Place = SetUpHints.Place(state),
            MovedOn = state.Line,
            Hints = [new("ENTER", "read, go on"), SetUpHints.Back, SetUpHints.StopSigns],
        };
    }

    public static SetUpTurn Press(SetUpState state, KeyPress key) =>
        key.IsAccept() ? new(state.GoOn()) : SetUpHints.ReadOn(state, key);
}
