using System.Diagnostics;
using System.Text;

namespace RackSide.EndToEnd.Driving;

/// <summary>A program between two pipes: lines in, lines out.</summary>
internal sealed class Piped : IDisposable
{
    private static readonly TimeSpan Limit = TimeSpan.FromSeconds(30);
    private readonly Process process;
    private readonly StringBuilder output = new();
    private readonly Task reading;
    private int seen;

    private Piped(Process process)
    {
        this.process = process;
        reading = Task.Run(Read);
    }

    /// <summary>All it has written.</summary>
    public string Output
    {
        get
        {
            lock (output)
            {
                return output.ToString();
            }
        }
    }

    public static Piped Start(string[] command, IReadOnlyDictionary<string, string> environment)
    {
        var start = new ProcessStartInfo(command[0], command[1..]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        return new Piped(Process.Start(start)!);
    }

    /// <summary>Types a line.</summary>
    public void Type(string line)
    {
        process.StandardInput.WriteLine(line);
        process.StandardInput.Flush();
    }

    /// <summary>Waits for a text after the last one waited for.</summary>
    public Task Hears(string text) => Hears(text, text);

    /// <summary>Waits for either of two texts after the last one waited for, and says whether it was the first.</summary>
    public async Task<bool> Hears(string one, string other)
    {
        for (var waited = Stopwatch.StartNew(); ; await Task.Delay(20))
        {
            var all = Output;
            if (new[] { one, other }.FirstOrDefault(text => all.IndexOf(text, seen, StringComparison.Ordinal) >= 0) is { } found)
            {
                seen = all.IndexOf(found, seen, StringComparison.Ordinal) + found.Length;
                return found == one;
            }

            if (waited.Elapsed > Limit)
            {
                throw new TimeoutException($"Waited for \"{one}\" or \"{other}\"; it wrote since:\n{all[seen..]}");
            }
        }
    }

    /// <summary>Ends its input and waits for its end.</summary>
    public async Task<int> End()
    {
        process.StandardInput.Close();
        using var limit = new CancellationTokenSource(Limit);
        await process.WaitForExitAsync(limit.Token);
        await reading;
        return process.ExitCode;
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
        }

        process.Dispose();
    }

    private void Read()
    {
        while (process.StandardOutput.ReadLine() is { } line)
        {
            lock (output)
            {
                output.Append(line).Append('\n');
            }
        }
    }
}
