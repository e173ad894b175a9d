using System.Diagnostics;
using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Benchmarks;

/// <summary>
/// What an accepted set costs until the screen may say "written", beside a bare write of as many bytes and an fsync on the
/// same disk. The two take turns, so that whatever else the machine does falls on both.
/// </summary>
internal static class AcceptedSet
{
    private const int Rounds = 1_500, Sector = 512;

    private static readonly Instant Now = Instant.FromUtc(2026, 3, 4, 18, 0);

    /// <summary>Prints the medians and their ratio.</summary>
    public static void Print()
    {
        var folder = Directory.CreateTempSubdirectory("accepted-set-").FullName;
        try
        {
            var (bare, set, settled) = Measure(folder);
            Console.WriteLine($"{"",-34}{"median",10}{"95 % under",12}{"ratio",8}   {Rounds} rounds");
            Line("bare append of 512 B and fsync", bare, bare);
            Line("an accepted set", set, bare);
            Line("settling it, after the answer", settled, bare);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (List<double> Bare, List<double> Set, List<double> Settled) Measure(string folder)
    {
        using var logbook = LiteLogbook.Open(Path.Combine(folder, "logbook"), Now);
        using var file = File.OpenHandle(Path.Combine(folder, "bare"), FileMode.Create, FileAccess.ReadWrite);
        RandomAccess.Write(file, new byte[256 * 1024], 0);
        RandomAccess.FlushToDisk(file);
        var (bare, set, settled) = (new List<double>(), new List<double>(), new List<double>());
        var (record, head) = (new byte[Sector], Head(logbook));
        for (var n = 0; n < Rounds; n++)
        {
            if (n % 40 == 0)
            {
                logbook.Begin(head = Head(logbook));
            }

            var id = logbook.NextId();
            var fact = new SetDone(id, Now, "squat", "back-squat", SetKind.Working, n % 5 + 1, 5, 5, Mass.Kg(42.5m));
            bare.Add(Timed(() =>
            {
                RandomAccess.Write(file, record, n % 512 * Sector);
                RandomAccess.FlushToDisk(file);
            }));
            set.Add(Timed(() => logbook.Append(head.Id, fact)));
            settled.Add(Timed(logbook.Settle));
        }

        return (bare, set, settled);
    }

    private static SessionHead Head(LiteLogbook logbook) => new()
    {
        Id = logbook.NextId(),
        Begun = Now,
        Date = new LocalDate(2026, 3, 4),
        Zone = "Europe/London",
        Lifter = "ottoline",
        Plan = "Two strength days",
        DayKey = "a",
        DayName = "Strength A",
        Kind = DayKind.Strength,
        Prescriptions = [],
    };

    private static double Timed(Action act)
    {
        var began = Stopwatch.GetTimestamp();
        act();
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }

    private static void Line(string what, List<double> took, List<double> bare) => Console.WriteLine(
        $"{what,-34}{At(took, 0.5),7:0.000} ms{At(took, 0.95),9:0.000} ms{At(took, 0.5) / At(bare, 0.5),8:0.00}");

    private static double At(List<double> took, double share) => took.Order().ElementAt((int)(share * (took.Count - 1)));
}
