namespace RackSide.Screens;

/// <summary>Finds out before anything is sent whether a full screen can be shown at all.</summary>
internal static class TerminalCheck
{
    /// <summary>Why not, or null where it can.</summary>
    /// <param name="options">Names the terminal.</param>
    /// <param name="attached">Whether input and output are both a terminal.</param>
    public static ScreenEnd? Refusal(ScreenOptions options, bool attached) =>
        !attached ? ScreenEnd.NoTerminal
        : options.Terminal == "dumb" ? ScreenEnd.DumbTerminal
        : null;

    /// <summary>
    /// Whether input and output are both a terminal. The library would open the controlling terminal behind a pipe; but
    /// whoever writes <c>rackside | less</c> expects text there.
    /// </summary>
    public static bool Attached() => !Console.IsInputRedirected && !Console.IsOutputRedirected;
}
