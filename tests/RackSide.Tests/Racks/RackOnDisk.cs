using System.Diagnostics;
using NodaTime;
using NodaTime.Testing;
using NodaTime.Text;
using RackSide.Logbook;
using RackSide.Tests.Commands;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>A rack with a folder of its own, and the program as it is run there.</summary>
internal sealed class RackOnDisk(string clock) : IDisposable
{
    private static readonly string Gym = Path.Combine(AppContext.BaseDirectory, "rackside-gym");

    private readonly string folder = Directory.CreateTempSubdirectory("rackside-rack-").FullName;

    /// <summary>Its program, run in this process; only the one that speaks to the server is another.</summary>
    public CommandLine Rackside => CommandLine.In(folder, clock).With("RACKSIDE_GYM_PROGRAM", Gym);

    /// <summary>Where its files are.</summary>
    public string Folder => folder;

    private Instant Now => LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm").Parse(clock).Value.InUtc().ToInstant();

    /// <summary>Its program in a process of its own; it ends by itself.</summary>
    public Process Start(params string[] words)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "rackside"), words) { RedirectStandardOutput = true, RedirectStandardError = true };
        (start.Environment["RACKSIDE_DATA"], start.Environment["RACKSIDE_CLOCK"], start.Environment["RACKSIDE_GYM_PROGRAM"]) = (folder, clock, Gym);
        return Process.Start(start)!;
    }

    /// <summary>The same, waited for.</summary>
    public Ran Run(params string[] words)
    {
        using var process = Start(words);
        var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        process.WaitForExit();
        return new Ran(process.ExitCode, output.Result, error.Result);
    }

    /// <summary>Somebody joins, as on the set-up page.</summary>
    public void SetUp(string name) => With(book => book.Keep(new Lifter("first", name, MassUnit.Kilogram, Now)));

    /// <summary>Somebody trains: so many sets in one session, closed or left open.</summary>
    public void Train(string name, int sets, bool closed = true) => With(book =>
    {
        var lifter = book.Lifters().First(l => l.Name == name);
        var head = new SessionHead
        {
            Id = book.NextId(),
            Begun = Now,
            Date = Now.InUtc().Date,
            Zone = "Europe/Berlin",
            Lifter = lifter.Key,
            Plan = "plan",
            DayKey = "strength-day",
            DayName = "Strength day",
            Kind = DayKind.Strength,
            Prescriptions = [],
        };
        book.Begin(head);
        for (var n = 1; n <= sets; n++)
        {
            book.Append(head.Id, new SetDone(book.NextId(), Now, "squat", "back-squat", SetKind.Working, n, 5, 5, new Mass(60, MassUnit.Kilogram)));
        }

        if (closed)
        {
            book.Append(head.Id, new SessionClosed(book.NextId(), Now));
        }
    });

    /// <summary>Everything it shows of everybody.</summary>
    public string Shows()
    {
        var shown = "";
        With(book => shown = string.Join('\n', book.Lifters().OrderBy(l => l.Key, StringComparer.Ordinal).SelectMany(l =>
            book.Sessions(l.Key).Select(s => $"{s.Head.Id} {s.Date} {string.Join(" | ", s.Facts)}")
                .Concat(book.WeighIns(l.Key).Select(w => w.ToString()))
                .Concat(GymFold.OpenTwice(book.Cards(l.Key)).Select(c => $"open beside another: {c.Id}"))
                .Prepend(l.ToString()))));
        return shown;
    }

    /// <summary>Something with its logbook.</summary>
    public void With(Action<LiteLogbook> what)
    {
        using var book = LiteLogbook.Open(folder, Now);
        book.Clock = new FakeClock(Now);
        what(book);
    }

    /// <summary>Whether the bytes of any of its files hold a text.</summary>
    public IEnumerable<string> FilesThatHold(string text) => Directory.GetFiles(folder, "*", SearchOption.AllDirectories)
        .Where(file => File.ReadAllBytes(file).AsSpan().IndexOf(System.Text.Encoding.UTF8.GetBytes(text)) >= 0).Select(f => Path.GetRelativePath(folder, f));

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(folder, recursive: true);
}
