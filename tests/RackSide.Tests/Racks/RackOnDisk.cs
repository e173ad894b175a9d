using NodaTime;
using NodaTime.Text;
using RackSide.Logbook;
using RackSide.Tests.Commands;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Tests.Racks;

/// <summary>A rack with a folder of its own.</summary>
internal sealed class RackOnDisk(string clock) : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("rackside-rack-").FullName;

    /// <summary>Its program, run in this process.</summary>
    public CommandLine Rackside => CommandLine.In(folder, clock).With("RACKSIDE_GYM_PROGRAM", Path.Combine(AppContext.BaseDirectory, "rackside-gym"));

    /// <summary>Where its files are.</summary>
    public string Folder => folder;

    /// <summary>Somebody joins, as on the set-up page.</summary>
    public void SetUp(string name)
    {
        var now = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(clock).Value.InUtc().ToInstant();
        using var book = LiteLogbook.Open(folder, now);
        book.Keep(new Lifter("first", name, MassUnit.Kilogram, now));
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);
}
