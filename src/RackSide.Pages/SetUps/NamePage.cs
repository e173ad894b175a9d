namespace RackSide.Pages.SetUps;

/// <summary>Who trains here; the one page that wants letters, and Enter alone will do.</summary>
internal static class NamePage
{
    public const string LettersOnly = "A name takes letters, a space, - and '.";
    public const string Full = "The name is as long as it can be.";

    // A longer name would crowd the top line at 50 columns.
    private const int Room = 20;

    // Console fonts of the Latin family end here; what lies beyond may be drawn as a blank.
    private const char LastLatin = '\u017f';

    public static EntryPage View(SetUpState state) => new(SetUpHints.Title("name"), "Who trains here?", state.TypedName, Room)
    {
        TakesLetters = true,
        Place = SetUpHints.Place(state),
        Below = $"ENTER alone takes the name {SetUpState.DefaultName}.",
        Hints = [SetUpHints.GoOn, new("letters", "type the name"), SetUpHints.Back, SetUpHints.StopSigns],
    };

    // A space is part of a name here, so only Enter goes on.
    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        { Code: KeyCode.Enter } => new(state.GoOn()),
        { Code: KeyCode.Backspace } when state.TypedName.Length > 0 => new(state with { TypedName = state.TypedName[..^1] }),
        { Code: KeyCode.Character } when !MayStand(key.Character) => SetUpTurn.Refused(state, LettersOnly),
        { Code: KeyCode.Character } when state.TypedName.Length == Room => SetUpTurn.Refused(state, Full),
        { Code: KeyCode.Character } => new(state with { TypedName = state.TypedName + key.Character }),
        _ => SetUpTurn.Refused(state),
    };

    private static bool MayStand(char character) =>
        character is ' ' or '-' or '\'' || (char.IsLetter(character) && character <= LastLatin);
}
