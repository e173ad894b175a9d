using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Summary;

/// <summary>What was done in a week. Warm-up sets never count; what was left out is not held against anybody.</summary>
/// <param name="SetsOnTarget">Working sets and holds that met their target with honest form.</param>
/// <param name="Sets">Working sets and holds done.</param>
/// <param name="HoldSeconds">Seconds held, all holds together.</param>
/// <param name="Totals">The totals, in the order first done.</param>
public sealed record WeekWork(int SetsOnTarget, int Sets, int HoldSeconds, IReadOnlyList<TotalLine> Totals)
{
    /// <summary>A session left open over night says nothing of its length after so long. Common practice, no source.</summary>
    private static readonly Duration Longest = Duration.FromHours(4);

    /// <summary>From the first page of each session to its last set, all together.</summary>
    public Duration Trained { get; init; }

    /// <summary>Counts a week's sessions.</summary>
    public static WeekWork Of(IsoWeek week, TrainingHistory history, Catalogue catalogue)
    {
        var sessions = history.Sessions.Where(s => week.Holds(s.Date)).ToList();
        var sets = sessions.SelectMany(s => s.Sets).ToList();
        var counted = sets.Where(s => s.Set.Kind is SetKind.Working or SetKind.Hold).ToList();
        return new WeekWork(
            counted.Count(s => s.OnTarget),
            counted.Count,
            sets.Where(s => s.Set.Kind is SetKind.Hold or SetKind.HeldShare && catalogue.Find(s.Set.Exercise)?.Held != false).Sum(s => s.Set.Done),
            TotalsOf(sessions, catalogue))
        {
            Trained = sessions.Aggregate(Duration.Zero, (sum, s) => sum + Length(s)),
        };
    }

    private static Duration Length(SessionRecord session) =>
        session.Sets.Count == 0 ? Duration.Zero : Duration.Min(Longest, Duration.Max(Duration.Zero, session.Sets[^1].Set.At - session.Head.Begun));

    private static IReadOnlyList<TotalLine> TotalsOf(IReadOnlyList<SessionRecord> sessions, Catalogue catalogue) =>
    [
        .. from session in sessions
           from prescription in session.Prescriptions
           where prescription.Scheme is Scheme.Total
           let done = session.Sets.Where(s => s.Set.Kind == SetKind.Share && s.Set.Slot == prescription.Slot).Sum(s => s.Set.Done)
           where done > 0
           group (done, asked: prescription.Targets.Sum()) by prescription.Exercise into same
           select new TotalLine(
               catalogue.Find(same.Key)?.ShortName ?? same.Key, same.Sum(t => t.done), same.Sum(t => t.asked)),
    ];
}
