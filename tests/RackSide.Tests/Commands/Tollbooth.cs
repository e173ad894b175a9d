using NodaTime;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Tests.Commands;

/// <summary>
/// The invented Tollbooth gym on disk: Ottoline Marsh trained on Mon 2, Wed 4, Fri 6 and Mon 9 Nov 2026. Form slipped in
/// her fourth squat set on the 6th, and she missed the last press on the 9th. Her squats go two reps over, so that
/// their load goes up although the step is a big one. Tests only read it.
/// </summary>
public sealed class Tollbooth : IDisposable
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();
    private static readonly Plan Plan = PlanFile.Default(Catalogue);
    private static readonly GymKit Kit = KitDefaults.For(MassUnit.Kilogram);

    private readonly PassingFolder folder = new();

    public Tollbooth()
    {
        folder.File("gym.yaml", GymFile.Write(new HouseRules(Kit, [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday], Sound: true)));
        using var logbook = LiteLogbook.Open(Folder, At(new LocalDate(2026, 11, 1)));
        var ottoline = new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, At(new LocalDate(2026, 11, 1)));
        logbook.Keep(ottoline);
        logbook.Weigh(ottoline.Key, new LocalDate(2026, 11, 3), Mass.Kg(72.4m));
        foreach (var day in new[] { 2, 4, 6, 9 })
        {
            Train(logbook, ottoline, new LocalDate(2026, 11, day));
        }
    }

    /// <summary>Where it lies.</summary>
    public string Folder => folder.Path;

    /// <summary>The command line there, at six in the evening of a day of November 2026.</summary>
    internal CommandLine On(int day) => CommandLine.In(Folder, $"2026-11-{day:00}T18:00");

    /// <summary>A copy of it that a test may write to.</summary>
    internal PassingFolder Copy()
    {
        var copy = new PassingFolder();
        foreach (var file in Directory.EnumerateFiles(Folder))
        {
            File.Copy(file, Path.Combine(copy.Path, Path.GetFileName(file)));
        }

        return copy;
    }

    public void Dispose() => folder.Dispose();

    private static Instant At(LocalDate date) => date.At(new LocalTime(18, 0)).InUtc().ToInstant();

    private static void Train(LiteLogbook logbook, Lifter lifter, LocalDate date)
    {
        var history = new TrainingHistory(logbook.Sessions(lifter.Key));
        var todays = Planner.For(Plan, Catalogue, Kit, lifter, history, date);
        var head = new SessionHead
        {
            Id = logbook.NextId(),
            Begun = At(date),
            Date = date,
            Zone = "Europe/London",
            Lifter = lifter.Key,
            Plan = Plan.Name,
            DayKey = todays.Day!.Key,
            DayName = todays.Day.Name,
            Kind = todays.Day.Kind,
            Prescriptions = todays.Prescriptions,
        };
        logbook.Begin(head);
        foreach (var asked in todays.Prescriptions.Where(p => p.Scheme is not Scheme.Tick))
        {
            Lift(logbook, head, asked);
        }

        logbook.Append(head.Id, new SessionClosed(logbook.NextId(), head.Begun));
    }

    private static void Lift(LiteLogbook logbook, SessionHead head, Prescription asked)
    {
        var kind = asked.Scheme switch { Scheme.Hold => SetKind.Hold, Scheme.Total => SetKind.Share, _ => SetKind.Working };
        foreach (var (target, i) in asked.Targets.Select((t, i) => (t, i)))
        {
            var misses = asked.Slot == "overhead-press" && head.Date.Day == 9 && i == asked.Targets.Count - 1;
            var done = misses ? 5 : asked.Slot == "squat" ? target + 2 : target;
            var set = new SetDone(logbook.NextId(), head.Begun, asked.Slot, asked.Exercise, kind, i + 1, target, done, asked.Load);
            logbook.Append(head.Id, set);
            if (asked.Slot == "squat" && head.Date.Day == 6 && i == 3)
            {
                logbook.Append(head.Id, new FormTold(logbook.NextId(), head.Begun, set.Id, Slipped: true));
            }
        }
    }
}

/// <summary>One gym for all tests that read it, one after the other, because one program at a time may open a logbook.</summary>
[CollectionDefinition(nameof(Tollbooth))]
public sealed class TollboothTests : ICollectionFixture<Tollbooth>;
