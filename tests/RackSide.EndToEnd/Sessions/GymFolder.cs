using System.Globalization;
using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;

namespace RackSide.EndToEnd.Sessions;

/// <summary>A gym's folder for one test, and what its logbook holds when nobody has it open.</summary>
internal sealed class GymFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("rackside-gym-").FullName;

    /// <summary>A file beside the logbook.</summary>
    public string File(string name, string text)
    {
        var file = System.IO.Path.Combine(Path, name);
        System.IO.File.WriteAllText(file, text);
        return file;
    }

    public IReadOnlyList<SessionRecord> Sessions()
    {
        using var logbook = LiteLogbook.Open(Path, Instant.FromUtc(2026, 12, 31, 0, 0));
        return [.. logbook.Lifters().SelectMany(l => logbook.Sessions(l.Key))];
    }

    /// <summary>What the logbook of a killed program holds, read from a copy, so that mending it is left to the program.</summary>
    public IReadOnlyList<SessionRecord> Peek()
    {
        using var copy = new GymFolder();
        foreach (var file in Directory.GetFiles(Path))
        {
            System.IO.File.Copy(file, System.IO.Path.Combine(copy.Path, System.IO.Path.GetFileName(file)));
        }

        return copy.Sessions();
    }

    /// <summary>
    /// A clock so much later than the last fact of a killed program. One that stood behind it would be taken for that moment
    /// until it has caught up, and a key would seem to bounce all the while.
    /// </summary>
    public string After(Duration later) => (Peek().SelectMany(s => s.Facts).Max(f => f.At) + later).InUtc().ToString("uuuu-MM-dd'T'HH:mm", CultureInfo.InvariantCulture);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
