using RackSide.Training.Kit;

namespace RackSide.Pages.SetUps;

/// <summary>What else the gym owns. Nought changes the step of the cable stack, because every other digit ticks a line.</summary>
internal static class OtherKitPage
{
    public const string NoStep = "Only a ticked cable stack has a step.";

    private static readonly int Count = KitOption.All.Count;

    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("other kit"),
        [.. KitOption.All.Select(option => new ListLine(Label(state, option), state.OtherKit.Contains(option.Word)))],
        state.Line)
    {
        Place = SetUpHints.Place(state),
        Above = ["What else is here? A digit ticks its line."],
        Hints =
        [
            SetUpHints.GoOn, SetUpHints.Tick(Count), SetUpHints.Move, new("0", "stack step"), SetUpHints.Back,
            SetUpHints.StopSigns,
        ],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        _ when key.IsAccept() => new(state.GoOn()),
        _ when key.Digit() == 0 => NextStep(state),
        _ when ListPage.Tick(key, state.Line, Count) is { } line => new(Toggle(state, line)),
        _ when ListPage.Move(key, state.Line, Count) is { } line => new(state with { Line = line }),
        _ => SetUpTurn.Refused(state),
    };

    private static SetUpState Toggle(SetUpState state, int line)
    {
        var word = KitOption.All[line].Word;
        var ticked = state.OtherKit.Contains(word) ? state.OtherKit.Remove(word) : state.OtherKit.Add(word);
        return state with { Line = line, OtherKit = ticked };
    }

    // Round and round, so that one key reaches every step.
    private static SetUpTurn NextStep(SetUpState state) => state.OtherKit.Contains(KitOption.CableStack)
        ? new(state.With(state.Choices with { StackStep = (state.Choices.StackStep + 1) % KitOption.StackSteps(state.Unit).Count }))
        : SetUpTurn.Refused(state, NoStep);

    private static string Label(SetUpState state, KitOption option) => option.Word switch
    {
        KitOption.Dumbbells => $"{option.Label}, {Span(KitDefaults.For(state.Unit))}",
        KitOption.CableStack => $"{option.Label}, {KitOption.StackSteps(state.Unit)[state.Choices.StackStep]} a step",
        _ => option.Label,
    };

    private static string Span(GymKit kit) => $"pairs of {kit.Dumbbells[0].Number} to {kit.Dumbbells[^1]}";
}
