namespace RackSide.Screens;

/// <summary>How the screen came to an end.</summary>
public enum ScreenEnd
{
    /// <summary>The conversation had nothing more to show.</summary>
    Finished,

    /// <summary>Ctrl+C was pressed, or SIGINT came.</summary>
    Interrupted,

    /// <summary>SIGTERM or SIGQUIT came: the system asks for the end, and it is an orderly one.</summary>
    Terminated,

    /// <summary>Nothing was shown: input or output is not a terminal.</summary>
    NoTerminal,

    /// <summary>Nothing was shown: the terminal says that it cannot place a cursor (<c>TERM=dumb</c>).</summary>
    DumbTerminal,

    /// <summary>The conversation threw; see <see cref="ScreenOutcome.Fault"/>.</summary>
    Failed,
}

/// <summary>How the screen ended. Whatever it was, the terminal is as it was before.</summary>
/// <param name="End">The way.</param>
/// <param name="Fault">What was thrown, where something was.</param>
public readonly record struct ScreenOutcome(ScreenEnd End, Exception? Fault = null)
{
    /// <summary>The exit code that fits (sysexits.h where it has one; 130 is what shells say of Ctrl+C).</summary>
    public int ExitCode => End switch
    {
        ScreenEnd.Interrupted => 130,
        ScreenEnd.NoTerminal or ScreenEnd.DumbTerminal => 64,
        ScreenEnd.Failed => ScreenHost.FaultExitCode,
        _ => 0,
    };
}
