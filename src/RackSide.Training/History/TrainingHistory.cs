using NodaTime;

namespace RackSide.Training.History;

/// <summary>All sessions of one lifter, oldest first.</summary>
/// <param name="Sessions">Open and closed, in the order begun.</param>
public sealed record TrainingHistory(IReadOnlyList<SessionRecord> Sessions)
{
    /// <summary>A history with nothing in it.</summary>
    public static TrainingHistory Empty { get; } = new([]);

    /// <summary>
    /// The performances of one exercise in one slot, oldest first: sessions in which at least one working set or hold of
    /// it stands. A session without any is not a miss; it does not count at all.
    /// </summary>
    public IEnumerable<Performance> Of(string exercise, string? slot = null) =>
        from session in Sessions
        from prescription in session.Prescriptions
        where prescription.Exercise == exercise && (slot is null || prescription.Slot == slot)
        let sets = session.Sets
            .Where(s => s.Set.Slot == prescription.Slot && s.Set.Exercise == exercise && s.Set.Kind != SetKind.WarmUp)
            .ToList()
        where sets.Count > 0
        select new Performance(session.Head.Date, prescription, sets, session.LeftOut.Contains(prescription.Slot));
}

/// <summary>What was done of one prescription on one day.</summary>
/// <param name="Date">The session's date.</param>
/// <param name="Asked">What was asked for.</param>
/// <param name="Sets">The working sets or holds that stand, in order; never empty.</param>
/// <param name="CutShort">Whether the rest of it was left out.</param>
public sealed record Performance(LocalDate Date, Prescription Asked, IReadOnlyList<SetResult> Sets, bool CutShort);
