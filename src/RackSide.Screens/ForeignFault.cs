namespace RackSide.Screens;

/// <summary>
/// Sees to it that an exception on any other thread ends the program as decently as one in the conversation: the screen's
/// thread gives the terminal back first, then the sentence is printed, then the process ends.
/// </summary>
internal sealed class ForeignFault : IDisposable
{
    private readonly ManualResetEventSlim restored = new();
    private readonly Nudges nudges;
    private readonly Action<Exception>? crashed;
    private readonly int screenThread = Environment.CurrentManagedThreadId;
    private int begun;

    /// <summary>Begins to watch; call it on the screen's thread.</summary>
    public ForeignFault(Nudges nudges, Action<Exception>? crashed)
    {
        (this.nudges, this.crashed) = (nudges, crashed);
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
    }

    /// <summary>Says that the terminal is as it was. After a fault this does not return: the failing thread has the word.</summary>
    public void TerminalRestored()
    {
        restored.Set();
        if (Volatile.Read(ref begun) != 0)
        {
            Thread.CurrentThread.Join();
        }
    }

    /// <summary>Stops watching.</summary>
    public void Dispose() => AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;

    // Returning from here lets the runtime print a stack trace and abort, so the process is ended instead.
    private void OnUnhandled(object sender, UnhandledExceptionEventArgs unhandled)
    {
        if (Environment.CurrentManagedThreadId == screenThread || Interlocked.Exchange(ref begun, 1) != 0)
        {
            return;
        }

        nudges.Stop(ScreenEnd.Failed);
        restored.Wait(ScreenHost.Patience);
        if (unhandled.ExceptionObject is Exception fault)
        {
            crashed?.Invoke(fault);
        }

        Environment.Exit(ScreenHost.FaultExitCode);
    }
}
