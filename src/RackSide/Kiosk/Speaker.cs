using System.ComponentModel;
using System.Diagnostics;
using RackSide.Pages;

namespace RackSide.Kiosk;

/// <summary>
/// Plays a generated tone through <c>aplay</c>, for a board whose console has no bell of its own. It never waits for the
/// tone, and where there is no card nothing is heard and nothing is said: the screen shows what the tone tells.
/// </summary>
internal sealed class Speaker
{
    private const string Player = "aplay";

    // Two pitches apart enough to be known without looking. Common practice, no source.
    private const double Ready = 660;
    private const double Go = 990;
    private static readonly byte[] Once = Tone.Wav(Ready);
    private static readonly byte[] Twice = Tone.Wav(Go, Go);
    private readonly string player;
    private Process? playing;

    private Speaker(string player) => this.player = player;

    /// <summary>The speaker of this machine; null where nothing can play.</summary>
    /// <param name="environment">Gives the value of a variable, or null; <c>PATH</c> is asked for.</param>
    public static Speaker? Find(Func<string, string?> environment) =>
        (environment("PATH") ?? "/usr/bin").Split(':', StringSplitOptions.RemoveEmptyEntries)
            .Select(folder => Path.Combine(folder, Player)).FirstOrDefault(File.Exists) is { } player
            ? new Speaker(player)
            : null;

    /// <summary>Begins to play; a tone that still sounds is let go on instead.</summary>
    public void Play(Bell bell)
    {
        if (bell is not Bell.None && playing is not { HasExited: false })
        {
            playing?.Dispose();
            playing = Begin(bell is Bell.Twice ? Twice : Once);
        }
    }

    private Process? Begin(byte[] tone)
    {
        try
        {
            var process = Process.Start(new ProcessStartInfo(player, ["-q"])
            {
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            });
            _ = process is null ? Task.CompletedTask : Feed(process, tone);
            return process;
        }
        catch (Exception trouble) when (trouble is Win32Exception or IOException)
        {
            return null;
        }
    }

    // Without a card it ends before it has read anything.
    private static async Task Feed(Process process, byte[] tone)
    {
        try
        {
            await process.StandardInput.BaseStream.WriteAsync(tone).ConfigureAwait(false);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // Nothing to be done about it, and the screen has flashed.
        }
    }
}
