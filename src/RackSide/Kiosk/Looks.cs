namespace RackSide.Kiosk;

/// <summary>The looks of the screen that a lifter may choose, by the words of the house rules.</summary>
internal static class Looks
{
    private static readonly (string Word, string Text)[] All = [("hues", "two hues"), ("grey", "no colour"), ("contrast", "high contrast")];

    /// <summary>What a look is called on a page.</summary>
    public static string Text(string? word) => Array.Find(All, l => l.Word == word).Text ?? "the gym's own";

    /// <summary>The one after another, with null, the gym's own, between the last and the first.</summary>
    public static string? After(string? word) => Array.FindIndex(All, l => l.Word == word) is var at && at + 1 < All.Length ? All[at + 1].Word : null;
}
