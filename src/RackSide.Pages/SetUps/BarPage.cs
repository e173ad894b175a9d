using RackSide.Training.Kit;

namespace RackSide.Pages.SetUps;

/// <summary>Which bar is used where nothing else is said.</summary>
internal static class BarPage
{
    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("bar"),
        [.. KitDefaults.Bars(state.Unit).Select(bar => new ListLine($"{bar.Name}, {bar.Mass}"))],
        state.Choices.Bar)
    {
        Place = SetUpHints.Place(state),
        Above = ["Which bar do you use? Count collars that stay on it."],
        Hints =
        [
            SetUpHints.GoOn, new($"1-{KitDefaults.Bars(state.Unit).Count}", "choose"), SetUpHints.Move, SetUpHints.Back,
            SetUpHints.StopSigns,
        ],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key.IsAccept()
        ? new(state.GoOn())
        : ListPage.Move(key, state.Choices.Bar, KitDefaults.Bars(state.Unit).Count) is { } chosen
            ? new(state.With(state.Choices with { Bar = chosen }))
            : SetUpTurn.Refused(state);
}
