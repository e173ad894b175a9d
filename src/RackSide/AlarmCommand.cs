using System.ComponentModel;
using System.Diagnostics;
using RackSide.Pages;

namespace RackSide;

/// <summary>
/// Runs the gym's own program beside the bell: a board has no speaker for the terminal's. The program is started as its
/// words stand, with no shell between, away from the screen's thread and from its terminal; one at a time, and none for ever.
/// </summary>
/// <param name="words">The program and its arguments; none runs nothing.</param>
internal sealed class AlarmCommand(IReadOnlyList<string> words)
{
    /// <summary>Tells the program which bell it is: 1 for "get ready", 2 for "go".</summary>
    public const string BellName = "RACKSIDE_BELL";

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(15);
    private int running;
    private volatile string? trouble;

    /// <summary>Why the program could not be started, in a sentence; null where it could.</summary>
    public string? Trouble => trouble;

    /// <summary>Rings; returns at once. While the program still runs, another bell does not start it again.</summary>
    public void Ring(Bell bell)
    {
        if (words.Count > 0 && bell is not Bell.None && Interlocked.Exchange(ref running, 1) == 0)
        {
            ThreadPool.QueueUserWorkItem(_ => RunToItsEnd(bell));
        }
    }

    private void RunToItsEnd(Bell bell)
    {
        try
        {
            Run(bell);
        }
        catch (Exception e) when (e is Win32Exception or IOException or InvalidOperationException)
        {
            trouble = $"alarm_command: {words[0]} could not be run ({e.Message}); mend it in gym.yaml";
        }
        finally
        {
            Volatile.Write(ref running, 0);
        }
    }

    // All three streams are ours, or the runtime would set the terminal up for the program.
    private void Run(Bell bell)
    {
        var start = new ProcessStartInfo(words[0], words.Skip(1)) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment[BellName] = bell is Bell.Twice ? "2" : "1";
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        process.OutputDataReceived += (_, _) => { };
        process.ErrorDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        if (!process.WaitForExit(Longest))
        {
            process.Kill(entireProcessTree: true);
        }
    }
}
