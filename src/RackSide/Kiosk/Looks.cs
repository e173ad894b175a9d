using RackSide.Files;
using RackSide.Pages.Settings;

namespace RackSide.Kiosk;

/// <summary>The looks of the screen that a lifter may choose, by the words of the house rules.</summary>
internal static class Looks
{
    private static readonly (string Word, string Text)[] All = [("hues", "two hues"), ("grey", "no colour"), ("contrast", "high contrast")];

    /// <summary>The gym's settings of the screen, in the look a lifter chose.</summary>
    public static ScreenSettings Of(HouseRules? rules, string? word)
    {
        var screen = rules?.Screen ?? new();
        return word is not null && ScreenReader.Tints.Parse(word) is { } tint ? screen with { Tint = tint } : screen;
    }

    /// <summary>What a look is called on a page.</summary>
    public static string Text(string? word) => Array.Find(All, l => l.Word == word).Text ?? "the gym's own";

    /// <summary>The one after another, with null, the gym's own, between the last and the first.</summary>
    public static string? After(string? word) => Array.FindIndex(All, l => l.Word == word) is var at && at + 1 < All.Length ? All[at + 1].Word : null;
}
