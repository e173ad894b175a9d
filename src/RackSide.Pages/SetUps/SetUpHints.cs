namespace RackSide.Pages.SetUps;

/// <summary>What the pages of the set-up have in common: their place in the top line and keys that mean the same on several.</summary>
internal static class SetUpHints
{
    public static KeyHint GoOn { get; } = new("ENTER", "go on");

    public static KeyHint Back { get; } = new("/", "back");

    public static KeyHint StopSigns { get; } = new("!", "stop signs");

    public static KeyHint Move { get; } = new("+ -", "up, down");

    public static KeyHint Tick(int lines) => new($"1-{lines} *", "tick");

    /// <summary>Moves on in a text that is too long for a small page; any other key is refused.</summary>
    public static SetUpTurn ReadOn(SetUpState state, KeyPress key) =>
        TextPage.Move(key, state.Line) is { } movedOn ? new(state with { Line = movedOn }) : SetUpTurn.Refused(state);

    public static string Title(string about) => $"SET-UP  {about}";

    public static string Place(SetUpState state) => $"page {SetUpOrder.Number(state)} of {SetUpOrder.Count(state)}";
}
