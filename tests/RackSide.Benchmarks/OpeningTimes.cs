using System.Diagnostics;
using NodaTime;
using RackSide.Logbook;
using RackSide.Simulation;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Strength;
using RackSide.Training.Summary;

namespace RackSide.Benchmarks;

/// <summary>
/// Opening a logbook of 0, 1 and 10 years, and the queries that a stay asks, in one warmed process. The native program is
/// measured by opening.sh.
/// </summary>
internal static class OpeningTimes
{
    private const int Rounds = 15;
    private const string Squat = "back-squat";

    private static readonly Instant Now = Instant.FromUtc(2036, 11, 26, 12, 0);

    /// <summary>Prints the medians.</summary>
    public static void Print()
    {
        var folder = Directory.CreateTempSubdirectory("opening-").FullName;
        try
        {
            Console.WriteLine($"{"years",5}{"open",10}{"plan",10}{"week page",11}{"an exercise",13}{"all sessions",14}{"verified open",15}   medians of {Rounds}, ms");
            foreach (var years in new[] { 0, 1, 10, 0, 1, 10 })
            {
                Print(Path.Combine(folder, Guid.NewGuid().ToString("n")), years);
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Print(string folder, int years)
    {
        YearsOfLog.Fill(folder, years, Now);
        var taken = Enumerable.Range(0, Rounds + 2).Select(_ => Once(folder)).Skip(2).ToList();
        var verified = Enumerable.Range(0, 5).Select(_ => Verified(folder)).Order().ElementAt(2);
        double Median(int which) => taken.Select(t => t[which]).Order().ElementAt(Rounds / 2);
        Console.WriteLine($"{years,5}{Median(0),10:0.00}{Median(1),10:0.00}{Median(2),11:0.00}{Median(3),13:0.00}{Median(4),14:0.00}{verified,15:0.00}");
    }

    private static double[] Once(string folder)
    {
        var opened = Timed(() => LiteLogbook.Open(folder, Now), out var first);
        first.Dispose();
        return [opened, Asked(folder, Plan), Asked(folder, Week), Asked(folder, Exercise), Asked(folder, l => l.Sessions("first").Sum(s => s.Facts.Count))];
    }

    // Each asked of a logbook that was just opened: sessions that were read stay in memory. What earlier rounds left is
    // collected before, because a program that has just started has nothing to collect.
    private static double Asked(string folder, Action<LiteLogbook> what)
    {
        using var logbook = LiteLogbook.Open(folder, Now);
        GC.Collect();
        return Timed(() => what(logbook));
    }

    private static double Timed(Func<LiteLogbook> open, out LiteLogbook opened)
    {
        LiteLogbook? logbook = null;
        var took = Timed(() => logbook = open());
        opened = logbook!;
        return took;
    }

    // Something in the write-ahead log, as after a power cut: everything is read and verified.
    private static double Verified(string folder)
    {
        var cut = Directory.CreateDirectory(folder + "-cut").FullName;
        foreach (var name in new[] { "log.db", "copy.db", "log.journal" })
        {
            File.Copy(Path.Combine(folder, name), Path.Combine(cut, name), overwrite: true);
        }

        File.WriteAllBytes(Path.Combine(cut, "log-log.db"), new byte[8192]);
        LiteLogbook? logbook = null;
        var took = Timed(() => logbook = LiteLogbook.Open(cut, Now));
        logbook!.Dispose();
        return took;
    }

    private static void Plan(LiteLogbook logbook) => Planner.For(
        SimulatedYear.Plan, SimulatedYear.Exercises, SimulatedYear.LargeKit, Lifter(logbook), Read(logbook, LookBack.ForPlan), Now.InUtc().Date);

    private static void Week(LiteLogbook logbook)
    {
        var today = Now.InUtc().Date;
        _ = WeekSummary.For(
            SimulatedYear.Plan,
            SimulatedYear.Exercises,
            SimulatedYear.LargeKit,
            Lifter(logbook),
            Read(logbook, c => LookBack.ForWeek(c, today)),
            logbook.WeighIns("first"),
            today).Lines.Count;
    }

    // As `rackside history` does: the records of all by their cards, and the newest sixty read.
    private static void Exercise(LiteLogbook logbook)
    {
        var done = logbook.Cards("first").Where(c => c.Performed.Any(p => p.Exercise == Squat)).ToList();
        _ = RepRecord.Of(
            SimulatedYear.Exercises[Squat],
            done.SelectMany(c => c.Loads.Where(l => l.Exercise == Squat).Select(l => new RepRecord(l.Reps, l.Load, c.Date)))).Count;
        _ = new TrainingHistory(logbook.Sessions("first", done.TakeLast(60).Select(c => c.Id).ToHashSet())).Of(Squat).Count();
    }

    private static TrainingHistory Read(LiteLogbook logbook, Func<IReadOnlyList<SessionCard>, IReadOnlySet<FactId>> needed)
    {
        var cards = logbook.Cards("first");
        var which = needed(cards);
        return new TrainingHistory(logbook.Sessions("first", which), logbook.Told("first")) { Earlier = [.. cards.Where(c => !which.Contains(c.Id))] };
    }

    private static Lifter Lifter(LiteLogbook logbook) => logbook.Lifters()[0];

    private static double Timed(Action act)
    {
        var began = Stopwatch.GetTimestamp();
        act();
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }
}
