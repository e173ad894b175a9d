using NodaTime;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Calendars;

/// <summary>A date typed on the numeric pad.</summary>
internal static class DateTyping
{
    /// <summary>The date a text stands for, as it is shown behind the box, with its year where that is not the usual one; empty for none.</summary>
    public static string Shown(string typed, LocalDate near) => DateEntry.Read(typed, near) is not { } date ? ""
        : $"= {(date.Year == near.Year ? date.Short() : date.Shown())}";

    /// <summary>What stands in the box after a key; null where it means nothing there. A dash parts an ISO date.</summary>
    public static string? After(string typed, KeyPress key) => key switch
    {
        { Code: KeyCode.Backspace } => typed.Length == 0 ? null : typed[..^1],
        _ when typed.Length >= DateEntry.Room => null,
        { Code: KeyCode.Character, Character: '.' or ',' } => typed + '.',
        { Code: KeyCode.Character, Character: '-' } => typed + '-',
        _ when key.Digit() is { } digit => typed + digit,
        _ => null,
    };
}
