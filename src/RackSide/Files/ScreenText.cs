using RackSide.Pages;
using RackSide.Pages.Settings;

namespace RackSide.Files;

/// <summary>Writes what is settled about the screen and the keys, as the reader takes it.</summary>
internal static class ScreenText
{
    /// <summary>The fields with their lines; no lines for a field that is left out.</summary>
    public static IEnumerable<(string Field, string[] Lines)> Fields(ScreenSettings screen, bool sound) =>
    [
        ("sound", [$"sound: {OnOff(sound)}"]),
        ("look", [$"look: {screen.Tint.ToString().ToLowerInvariant()}"]),
        ("signs", [$"signs: {screen.SevenBit switch { null => "auto", true => "ascii", false => "blocks" }}"]),
        ("big", [$"big: {OnOff(screen.Big)}"]),
        ("flash", [$"flash: {OnOff(screen.Flash)}"]),
        ("keys", screen.Keys.Changed.Count == 0 ? [] : ["keys:", .. screen.Keys.Changed.Select(Keys)]),
    ];

    /// <summary>A house-rules file with these settings in it and everything else as it was.</summary>
    public static string Into(string text, ScreenSettings screen, bool sound) =>
        Fields(screen, sound).Aggregate(text, (t, f) => GymLines.Set(t, f.Field, f.Lines));

    private static string Keys(KeyValuePair<Verb, IReadOnlyList<KeyPress>> changed) =>
        $"  {KeyLayout.WordOf(changed.Key)}: [{string.Join(", ", changed.Value.Select(k => Quoted(KeyNames.Of(k))))}]";

    private static string Quoted(string key) => key.All(char.IsAsciiLetter) ? key : key == "\"" ? "'\"'" : key == "\\" ? "'\\'" : $"\"{key}\"";

    private static string OnOff(bool on) => on ? "on" : "off";
}
