using System.Collections.Concurrent;

namespace RackSide.Screens.Plain;

/// <summary>Reads lines on a thread of its own, because reading cannot be left and clocks must go on meanwhile.</summary>
internal sealed class LineReader
{
    private readonly ConcurrentQueue<string> lines = new();
    private volatile bool ended;

    /// <summary>Begins to read.</summary>
    /// <param name="input">The lines.</param>
    /// <param name="stir">Called after each, and at the end.</param>
    public LineReader(TextReader input, Action stir)
    {
        // A background thread is left behind where the program ends first.
        var thread = new Thread(() => Read(input, stir)) { IsBackground = true, Name = "lines" };
        thread.Start();
    }

    /// <summary>Whether all lines were read and taken.</summary>
    public bool Over => ended && lines.IsEmpty;

    /// <summary>The next line, where one was typed.</summary>
    public bool Next(out string line)
    {
        var found = lines.TryDequeue(out var next);
        line = next ?? "";
        return found;
    }

    private void Read(TextReader input, Action stir)
    {
        while (input.ReadLine() is { } line)
        {
            lines.Enqueue(line);
            stir();
        }

        ended = true;
        stir();
    }
}
