using System.Runtime.InteropServices;

namespace RackSide.Screens;

/// <summary>
/// Answers the signals a screen meets, while it is shown. Neither the library nor the runtime does: untreated, they leave
/// the terminal in the second screen, without a cursor, raw.
/// </summary>
internal sealed class ScreenSignals : IDisposable
{
    private readonly List<PosixSignalRegistration> registrations = [];

    /// <summary>Begins to listen.</summary>
    /// <param name="nudges">Told of requests to end, and of going on after a stop.</param>
    /// <param name="hangUp">Called when the terminal is gone.</param>
    /// <param name="runtimeKeepsTerminal">
    /// Whether the driver reads through the runtime. After a stop the runtime puts the terminal into the state it last gave
    /// it: with that driver this makes it raw again; with one that has made it raw itself, it would undo that.
    /// </param>
    public ScreenSignals(Nudges nudges, Action hangUp, bool runtimeKeepsTerminal)
    {
        On(PosixSignal.SIGTERM, () => nudges.Stop(ScreenEnd.Terminated));
        On(PosixSignal.SIGQUIT, () => nudges.Stop(ScreenEnd.Terminated));
        On(PosixSignal.SIGINT, () => nudges.Stop(ScreenEnd.Interrupted));
        On(PosixSignal.SIGHUP, hangUp);
        if (!OperatingSystem.IsWindows())
        {
            On(PosixSignal.SIGWINCH, nudges.Resize, cancel: false);
            On(PosixSignal.SIGCONT, nudges.Resume, cancel: !runtimeKeepsTerminal);
        }
    }

    /// <summary>Stops listening.</summary>
    public void Dispose() => registrations.ForEach(registration => registration.Dispose());

    private void On(PosixSignal signal, Action answer, bool cancel = true) =>
        registrations.Add(PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = cancel;
            answer();
        }));
}
