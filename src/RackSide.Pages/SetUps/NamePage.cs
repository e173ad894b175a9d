using RackSide.Pages.Lifters;

namespace RackSide.Pages.SetUps;

/// <summary>Who trains here; the one page that wants letters, and Enter alone will do.</summary>
internal static class NamePage
{
    public const string LettersOnly = NameTyping.LettersOnly;
    public const string Full = NameTyping.Full;

    public static EntryPage View(SetUpState state) => new(SetUpHints.Title("name"), "Who trains here?", state.TypedName, NameTyping.Room)
    {
        TakesLetters = true,
        Place = SetUpHints.Place(state),
        Below = $"Letters type as they are; on the pad turn them. ENTER alone takes the name {SetUpState.DefaultName}.",
        Hints = [SetUpHints.GoOn, .. NameTyping.Hints, SetUpHints.Back, SetUpHints.StopSigns],
    };

    // A space is part of a name here, so only Enter goes on.
    public static SetUpTurn Press(SetUpState state, KeyPress key) =>
        key.Code == KeyCode.Enter ? new(state.GoOn())
        : new NameTyping(state.TypedName, state.TurningName).Press(key) is var (name, said)
            ? new(state with { TypedName = name.Text, TurningName = name.Turning }, said)
            : SetUpTurn.Refused(state);
}
