using RackSide.Training.Kit;

namespace RackSide.Pages.SetUps;

/// <summary>What else the gym owns. A digit ticks its line; plus and minus change the step of the cable stack.</summary>
internal static class OtherKitPage
{
    public const string NoStep = "Only a ticked cable stack has a step: press 6.";
    public const string LastStep = "The cable stack has no other step that way.";

    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("other kit"),
        [.. KitOption.All.Select(option => new ListLine(Label(state, option), state.OtherKit.Contains(option.Word)))],
        state.Line)
    {
        Place = SetUpHints.Place(state),
        Question = "What else is here? A digit ticks its line.",
        Hints =
        [
            SetUpHints.GoOn, new("1-9", "tick"), new("*", "next line"), new("+ -", "stack step"), SetUpHints.Back,
            SetUpHints.StopSigns,
        ],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        _ when key.IsAccept() => new(state.GoOn()),
        _ when key.Digit() is { } digit and > 0 => new(Toggle(state, digit - 1)),
        _ when key.IsMore() => Step(state, 1),
        _ when key.IsFewer() => Step(state, -1),
        _ when key.IsNextLine() => new(state with { Line = (state.Line + 1) % KitOption.All.Count }),
        _ when key.IsLineUp() => new(state with { Line = (state.Line + KitOption.All.Count - 1) % KitOption.All.Count }),
        _ => SetUpTurn.Refused(state),
    };

    private static SetUpState Toggle(SetUpState state, int line)
    {
        var word = KitOption.All[line].Word;
        var ticked = state.OtherKit.Contains(word) ? state.OtherKit.Remove(word) : state.OtherKit.Add(word);
        return state with { Line = line, OtherKit = ticked };
    }

    private static SetUpTurn Step(SetUpState state, int by)
    {
        if (!state.OtherKit.Contains(KitOption.CableStack) || KitOption.All[state.Line].Word != KitOption.CableStack)
        {
            return SetUpTurn.Refused(state, NoStep);
        }

        var step = state.Choices.StackStep + by;
        return step >= 0 && step < KitOption.StackSteps(state.Unit).Count
            ? new(state.With(state.Choices with { StackStep = step }))
            : SetUpTurn.Refused(state, LastStep);
    }

    private static string Label(SetUpState state, KitOption option) => option.Word switch
    {
        KitOption.Dumbbells => $"{option.Label}, {Span(KitDefaults.For(state.Unit))}",
        KitOption.CableStack => $"{option.Label}, {KitOption.StackSteps(state.Unit)[state.Choices.StackStep]} a step",
        _ => option.Label,
    };

    private static string Span(GymKit kit) => $"pairs of {kit.Dumbbells[0].Number} to {kit.Dumbbells[^1]}";
}
