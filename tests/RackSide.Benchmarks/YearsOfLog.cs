using NodaTime;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Simulation;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;

namespace RackSide.Benchmarks;

/// <summary>
/// Fills a logbook with years of one invented lifter: a simulated year with its plans and reasons, and a ramp of four sets
/// before each loaded lift, laid one after the other up to yesterday.
/// </summary>
internal static class YearsOfLog
{
    private const string Lifter = "first";

    /// <summary>Fills the logbook of a folder, with the house rules beside it; prints what it then holds.</summary>
    public static void Fill(string folder, int years, Instant now)
    {
        using var logbook = LiteLogbook.Open(folder, now);
        logbook.Keep(new Lifter(Lifter, "Ottoline Marsh", MassUnit.Kilogram, now));
        List<SessionRecord> sessions = years == 0 ? [] : [.. Years(years, now.InUtc().Date)];
        logbook.Import(sessions);
        File.WriteAllText(Path.Combine(folder, "gym.yaml"), GymFile.Write(new HouseRules(SimulatedYear.LargeKit, [.. SimulatedYear.Plan.Week.Keys.Order()], true)));
        var bytes = new DirectoryInfo(folder).GetFiles("log.db").Sum(f => f.Length);
        Console.WriteLine($"{years} years: {sessions.Count} sessions, {sessions.Sum(s => s.Facts.OfType<SetDone>().Count())} sets, {bytes / 1024.0 / 1024:0.0} MiB");
    }

    /// <summary>Years of sessions of one lifter up to yesterday.</summary>
    public static IEnumerable<SessionRecord> Years(int years, LocalDate today)
    {
        var year = new SimulatedYear(1).Live(52).History.Sessions;
        var last = year[^1].Head.Date;
        var sequence = 0L;
        for (var back = years - 1; back >= 0; back--)
        {
            var days = Period.DaysBetween(last, today.PlusDays(-1 - (364 * back)));
            foreach (var session in year)
            {
                yield return Shifted(session, days, () => new FactId("bcdfgh", ++sequence));
            }
        }
    }

    private static SessionRecord Shifted(SessionRecord session, int days, Func<FactId> next)
    {
        var by = Duration.FromDays(days);
        var head = session.Head with
        {
            Id = next(),
            Begun = session.Head.Begun + by,
            Date = session.Head.Date.PlusDays(days),
            Lifter = Lifter,
        };
        return new SessionRecord(head, [.. WithRamps(session, by, next)]);
    }

    private static IEnumerable<Fact> WithRamps(SessionRecord session, Duration by, Func<FactId> next)
    {
        foreach (var fact in session.Facts)
        {
            if (fact is SetDone { Kind: SetKind.Working, Number: 1, Load: { } load } first)
            {
                foreach (var step in Enumerable.Range(1, 4))
                {
                    yield return first with { Id = next(), At = first.At + by, Kind = SetKind.WarmUp, Number = step, Load = load with { Amount = Math.Round(load.Amount * step / 5, 1) } };
                }
            }

            yield return fact with { Id = next(), At = fact.At + by };
        }
    }
}
