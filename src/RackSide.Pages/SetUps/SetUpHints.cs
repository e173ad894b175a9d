namespace RackSide.Pages.SetUps;

/// <summary>What the pages of the set-up have in common: their place in the top line and the keys that mean the same on all.</summary>
internal static class SetUpHints
{
    public static KeyHint GoOn { get; } = new("ENTER", "go on");

    public static KeyHint Back { get; } = new("/", "back");

    public static KeyHint StopSigns { get; } = new("?", "stop signs");

    public static KeyHint Move { get; } = new("+ -", "up, down");

    public static KeyHint Tick(int lines) => new($"1-{lines} *", "tick");

    public static string Title(string about) => $"SET-UP  {about}";

    public static string Place(SetUpState state) => $"page {SetUpOrder.Number(state.At)} of {SetUpOrder.Pages}";
}
