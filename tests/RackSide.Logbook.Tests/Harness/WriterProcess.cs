using System.Diagnostics;
using System.Globalization;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>A set that the writer was told is on disk, by the counts of its session and its own.</summary>
internal readonly record struct Ack(long Session, long Set)
{
    /// <summary>The set of a line; null where it tells of none.</summary>
    public static Ack? Of(string line) =>
        line.Split(' ') is [var session, var set] && long.TryParse(session, CultureInfo.InvariantCulture, out var first)
            ? new Ack(first, long.Parse(set, CultureInfo.InvariantCulture))
            : null;

    /// <summary>Those that a logbook does not hold as they were written.</summary>
    public static IReadOnlyList<Ack> Missing(LiteLogbook book, IReadOnlyCollection<Ack> acks)
    {
        var held = book.Sessions("ottoline")
            .SelectMany(s => s.Facts.OfType<SetDone>().Select(f => (Ack: new Ack(s.Head.Id.Sequence, f.Id.Sequence), f.Done, f.Load)))
            .Where(s => s.Done == s.Ack.Set % 13 && s.Load == Mass.Kg(s.Ack.Set))
            .Select(s => s.Ack)
            .ToHashSet();
        return [.. acks.Where(a => !held.Contains(a))];
    }
}

/// <summary>The writer in a process of its own.</summary>
internal static class WriterProcess
{
    /// <summary>Has it do a piece of work, killed at that call to the disk.</summary>
    /// <returns>The sets it told, and its last line.</returns>
    public static (IReadOnlyList<Ack> Acks, string? Last) Do(string folder, string work, int call)
    {
        using var child = Start(folder, work, call.ToString(CultureInfo.InvariantCulture));
        var lines = child.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);
        child.WaitForExit();
        return ([.. lines.Select(Ack.Of).OfType<Ack>()], lines.LastOrDefault());
    }

    /// <summary>Starts it.</summary>
    public static Process Start(params string[] arguments) =>
        Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "RackSide.Logbook.Writer.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
        })!;
}
