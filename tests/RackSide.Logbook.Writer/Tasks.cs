using System.Diagnostics.CodeAnalysis;
using NodaTime;
using RackSide.Logbook.Disks;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Writer;

/// <summary>What the writer does until it is killed.</summary>
internal static class Tasks
{
    private static readonly Instant Now = Instant.FromUtc(2026, 3, 4, 18, 0);

    /// <summary>Sessions of so many sets without an end.</summary>
    [DoesNotReturn]
    public static void WriteOn(string folder, int sets)
    {
        while (true)
        {
            using var logbook = LiteLogbook.Open(folder, Now);
            Train(logbook, sets);
            Console.WriteLine("closing");
        }
    }

    /// <summary>One piece of work.</summary>
    public static void Do(string work, string folder, Calls calls)
    {
        using var logbook = LiteLogbook.Open(new FatalDisk(new FolderDisk(folder), calls), Now);
        switch (work)
        {
            // What opening finds to do, a migration or a rebuild, and what closing then does.
            case "open":
                break;

            // A session closed: the log's write-ahead log goes into it, it is copied, and the journal is begun anew.
            case "checkpoint":
                logbook.Append(Train(logbook, sets: 3), new SessionClosed(logbook.NextId(), Now));
                logbook.Settle();
                break;
            case "backup":
                Train(logbook, sets: 1);
                new Backups(new FatalDisk(new FolderDisk(Path.Combine(folder, Backups.FolderName)), calls))
                    .Rotate(logbook.Snapshot(), new LocalDate(2026, 3, 5), mostBytes: 64_000_000);
                break;
            default:
                throw new ArgumentException($"no work {work}", nameof(work));
        }
    }

    private static FactId Train(LiteLogbook logbook, int sets)
    {
        var head = new SessionHead
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
        logbook.Begin(head);
        for (var n = 0; n < sets; n++)
        {
            var id = logbook.NextId();
            logbook.Append(head.Id, new SetDone(
                id, Now, "squat", "squat", SetKind.Working, n + 1, 5, (int)(id.Sequence % 13), Mass.Kg(id.Sequence)));
            Console.WriteLine($"{head.Id.Sequence} {id.Sequence}");
            if (id.Sequence % 3 != 0)
            {
                logbook.Settle();
            }
        }

        return head.Id;
    }
}
