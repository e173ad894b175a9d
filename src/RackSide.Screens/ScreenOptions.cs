using RackSide.Pages;

namespace RackSide.Screens;

/// <summary>What the screen must know of the terminal and of the lifter's wishes before it starts.</summary>
public sealed record ScreenOptions
{
    /// <summary>The terminal's type as <c>TERM</c> names it; null or empty where nothing names it.</summary>
    public string? Terminal { get; init; }

    /// <summary>Whether the two hues may be used; bold and reverse are used either way.</summary>
    public bool Colour { get; init; } = true;

    /// <summary>Whether the terminal's bell may ring.</summary>
    public bool Sound { get; init; } = true;

    /// <summary>Called beside the bell, and where there is none; it must return at once. Null for nothing.</summary>
    public Action<Bell>? Alarm { get; init; }

    /// <summary>
    /// Whether the screen is all there is, as on a kiosk: then no key ends or suspends it (Ctrl+C, Ctrl+Z), because nothing
    /// stands behind it.
    /// </summary>
    public bool Locked { get; init; }

    /// <summary>
    /// Called once when the terminal is gone, to close what must be closed; the process ends with
    /// <see cref="ScreenHost.HangupExitCode"/> right after. Runs on another thread than the conversation's, but never while
    /// one of its members runs (unless that takes longer than <see cref="ScreenHost.Patience"/>).
    /// </summary>
    public Action? Hangup { get; init; }

    /// <summary>
    /// Called after an exception on a thread that is not the screen's, with the terminal restored, to print the one
    /// sentence; the process ends with <see cref="ScreenHost.FaultExitCode"/> right after.
    /// </summary>
    public Action<Exception>? Crashed { get; init; }

    /// <summary>
    /// The options an environment asks for: <c>TERM</c>, and <c>NO_COLOR</c>, which counts when it is set and not empty
    /// (no-color.org).
    /// </summary>
    /// <param name="environment">Gives the value of a variable, or null.</param>
    /// <param name="noColour">The flag of the command line, which wins.</param>
    /// <param name="silent">Whether the bell is off.</param>
    public static ScreenOptions From(Func<string, string?> environment, bool noColour = false, bool silent = false) => new()
    {
        Terminal = environment("TERM"),
        Colour = !noColour && string.IsNullOrEmpty(environment("NO_COLOR")),
        Sound = !silent,
    };

    /// <summary>Whether this is the text console of Linux, which has no second screen to leave and other codes for some keys.</summary>
    internal bool LinuxConsole => Terminal == "linux";
}
