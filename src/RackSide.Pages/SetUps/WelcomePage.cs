using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>What this is, and the cautions. Enter says that they were read.</summary>
internal static class WelcomePage
{
    public const string FirstPage = "This is the first page; q leaves the set-up.";

    private const string What = "RackSide keeps count beside the rack. Nine short pages set it up.";

    private const string Joins = "Somebody new. Five short pages; the gym's bar, plates and days stay as they are.";

    public static TextPage View(SetUpState state) => new(SetUpHints.Title("welcome"), [state.Joining ? Joins : What, .. Cautions.All])
    {
        Place = SetUpHints.Place(state),
        MovedOn = state.Line,
        Hints = [new("ENTER", "read, go on"), new("! *", "stop signs"), new("q", "leave")],
    };

    // The pad has no question mark, so its star opens the stop signs from the page that names them.
    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        _ when key.IsAccept() => new(state.GoOn()),
        { Code: KeyCode.Character, Character: '*' } => new(state with { StopSigns = 0 }),
        { Code: KeyCode.Character, Character: 'q' } => new(state with { Left = true }),
        _ => SetUpHints.ReadOn(state, key),
    };
}
