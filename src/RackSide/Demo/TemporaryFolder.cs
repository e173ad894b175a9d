using System.Runtime.InteropServices;

namespace RackSide.Demo;

/// <summary>
/// A folder that only its owner may enter and that is gone with the program: when it is let go of, or else when the process
/// exits or a signal ends it. Where it cannot be removed, nobody is told, because nobody misses anything.
/// </summary>
internal sealed class TemporaryFolder : IDisposable
{
    private const string NameBegins = "rackside-demo-";
    private static readonly PosixSignal[] Ends = [PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP];

    private IReadOnlyList<PosixSignalRegistration> signals;

    /// <summary>Makes one. Until <see cref="LeaveSignals"/> a signal takes it along too: the runtime ends the process without a word to anybody.</summary>
    /// <exception cref="Refusal">There is no room for it.</exception>
    public TemporaryFolder()
    {
        try
        {
            Path = Directory.CreateTempSubdirectory(NameBegins).FullName;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"--demo: no temporary folder can be made ({e.Message.TrimEnd('.')}); name one that can be written in TMPDIR");
        }

        AppDomain.CurrentDomain.ProcessExit += Remove;
        signals = [.. Ends.Select(s => PosixSignalRegistration.Create(s, _ => Remove(null, EventArgs.Empty)))];
    }

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>Leaves signals to the screen, which ends in order and closes the logbook first.</summary>
    public void LeaveSignals()
    {
        foreach (var signal in signals)
        {
            signal.Dispose();
        }

        signals = [];
    }

    /// <summary>Removes it with all that is in it.</summary>
    public void Dispose()
    {
        LeaveSignals();
        AppDomain.CurrentDomain.ProcessExit -= Remove;
        Remove(null, EventArgs.Empty);
    }

    private void Remove(object? sender, EventArgs e)
    {
        try
        {
            Directory.Delete(Path, recursive: true);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // Gone already, or not to be had.
        }
    }
}
