using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Exchange;

/// <summary>
/// Makes ordinary closed sessions of the sets of a table: what was done is what they asked for. Where a slot of the plan
/// asks for the same, the session has that slot and its scheme, so that the plan goes on from there.
/// </summary>
internal sealed class TableSessions(Plan plan, string zone, Func<FactId> nextId, Func<LocalDate, Instant> beginning, Instant now)
{
    /// <summary>About how far apart sets lie of which nobody wrote down when. Common practice, no source.</summary>
    private static readonly Duration Apart = Duration.FromMinutes(3);

    /// <summary>One session for each day, oldest first.</summary>
    public IReadOnlyList<SessionRecord> Of(IEnumerable<SetRow> rows) =>
        [.. rows.GroupBy(r => (r.Lifter.Key, r.Date)).OrderBy(d => d.Key.Date).Select(d => Session(d.Key.Key, d.Key.Date, [.. d]))];

    private SessionRecord Session(string lifter, LocalDate date, List<SetRow> rows)
    {
        var day = plan.Days.MaxBy(d => rows.Count(r => d.Slots.Any(s => s.Exercises.Contains(r.Exercise.Id))))!;
        var asked = rows.GroupBy(r => r.Exercise.Id).ToDictionary(e => e.Key, e => Asked(day, [.. e]));
        var head = new SessionHead
        {
            Id = nextId(),
            Begun = Instant.Min(now, beginning(date)),
            Date = date,
            Zone = zone,
            Lifter = lifter,
            Plan = plan.Name,
            DayKey = day.Key,
            DayName = day.Name,
            Kind = day.Kind,
            Prescriptions = [.. rows.Select(r => r.Exercise.Id).Distinct().Select(id => asked[id])],
        };
        var facts = rows.SelectMany((r, i) => Facts(asked[r.Exercise.Id], r, Instant.Min(now, head.Begun + ((i + 1) * Apart)))).ToList();
        return new SessionRecord(head, [.. facts, new SessionClosed(nextId(), facts[^1].At)]);
    }

    private IEnumerable<Fact> Facts(Prescription asked, SetRow row, Instant at)
    {
        var set = new SetDone(nextId(), at, asked.Slot, asked.Exercise, row.Kind, row.Number!.Value, row.Done, row.Done, row.Load) { Side = row.Side };
        return row.Slipped ? [set, new FormTold(nextId(), at, set.Id, Slipped: true)] : [set];
    }

    private static Prescription Asked(TrainingDay day, List<SetRow> rows)
    {
        var work = rows.Where(r => r.Kind != SetKind.WarmUp).DefaultIfEmpty(rows[^1]).ToList();
        int[] done = [.. work.GroupBy(r => (r.Number, r.Kind)).Select(n => n.Max(r => r.Done))];
        var slot = day.Slots.FirstOrDefault(s => s.Exercises.Contains(work[0].Exercise.Id) && Fits(s.Scheme, work[0].Kind, done));
        var scheme = slot?.Scheme ?? SchemeOf(work[0].Kind, done);
        return new Prescription
        {
            Slot = slot?.Key ?? work[0].Exercise.Id,
            Motion = work[0].Exercise.Motion,
            Exercise = work[0].Exercise.Id,
            Scheme = scheme,
            Targets = scheme is Scheme.Total or Scheme.Accumulate ? [done.Sum()] : done,
            EachSide = work.Exists(r => r.Side is not null),
            Load = work.Select(r => r.Load).Max(),
            Rest = slot?.Rest ?? Duration.FromMinutes(2),
            Why = new Reason("from-a-table", "From an imported table: what was done."),
        };
    }

    private static bool Fits(Scheme scheme, SetKind kind, int[] done) => (scheme, kind) switch
    {
        (Scheme.Fixed f, SetKind.Working) => done.Length == f.Sets && done.All(d => d == f.Reps),
        (Scheme.Range r, SetKind.Working) => done.Length == r.Sets && done.All(d => d >= r.Low && d <= r.High),
        (Scheme.Hold h, SetKind.Hold) => done.Length == h.Sets && done.All(d => d >= h.LowSeconds && d <= h.HighSeconds),
        (Scheme.Total t, SetKind.Share) => done.Sum() == t.Reps,
        _ => false,
    };

    private static Scheme SchemeOf(SetKind kind, int[] done) => kind switch
    {
        SetKind.Share => new Scheme.Total(done.Sum()),
        SetKind.HeldShare => new Scheme.Accumulate(done.Sum(), done.Sum()),
        SetKind.Hold => new Scheme.Hold(done.Length, done.Min(), done.Max()),
        _ when done.Min() == done.Max() => new Scheme.Fixed(done.Length, done[0]),
        _ => new Scheme.Range(done.Length, done.Min(), done.Max()),
    };
}
