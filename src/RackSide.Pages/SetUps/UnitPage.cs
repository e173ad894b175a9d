using RackSide.Training.Measures;

namespace RackSide.Pages.SetUps;

/// <summary>Kilograms or pounds: what the plates are marked in.</summary>
internal static class UnitPage
{
    private static readonly MassUnit[] Units = [MassUnit.Kilogram, MassUnit.Pound];

    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("unit"),
        [new("kilograms, kg"), new("pounds, lb")],
        Array.IndexOf(Units, state.Unit))
    {
        Place = SetUpHints.Place(state),
        Above = [state.Joining ? "Which unit do you read loads in?" : "What are your plates marked in?"],
        Hints = [SetUpHints.GoOn, new("1-2", "choose"), SetUpHints.Move, SetUpHints.Back, SetUpHints.StopSigns],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key.IsAccept()
        ? new(state.GoOn())
        : ListPage.Move(key, Array.IndexOf(Units, state.Unit), Units.Length) is { } chosen
            ? new(state with { Unit = Units[chosen] })
            : SetUpTurn.Refused(state);
}
