using RackSide.Logbook.Storing;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>
/// Equality that looks into lists. It compares whole records with only their lists lent from one to the other, so that a
/// property added tomorrow is compared without anyone thinking of it.
/// </summary>
internal static class Same
{
    public static bool Are(Entry a, Entry b) => (a, b) switch
    {
        (Entry.SessionBegun x, Entry.SessionBegun y) => Are(x.Head, y.Head),
        (Entry.FactAdded x, Entry.FactAdded y) => x.Session == y.Session && Are(x.Fact, y.Fact),
        (Entry.FactTold x, Entry.FactTold y) => x.Told.Lifter == y.Told.Lifter && Are(x.Told.Fact, y.Told.Fact),
        (Entry.Pulled x, Entry.Pulled y) => x with { Events = y.Events } == y && All(x.Events, y.Events, Are),
        _ => a == b,
    };

    public static bool Are(GymEvent a, GymEvent b) => (a, b) switch
    {
        (SessionStarted x, SessionStarted y) => Are(x.Head, y.Head),
        (SessionFact x, SessionFact y) => (x.Lifter, x.Session) == (y.Lifter, y.Session) && Are(x.Fact, y.Fact),
        (OutsideFact x, OutsideFact y) => x.Lifter == y.Lifter && Are(x.Fact, y.Fact),
        _ => a == b,
    };

    public static bool Are(SessionRecord a, SessionRecord b) => Are(a.Head, b.Head) && All(a.Facts, b.Facts, Are);

    public static bool Are(SessionHead a, SessionHead b) =>
        a with { Prescriptions = b.Prescriptions } == b && All(a.Prescriptions, b.Prescriptions, Are);

    public static bool Are(Fact a, Fact b) => (a, b) is (ExerciseSwapped x, ExerciseSwapped y)
        ? x with { Filled = y.Filled } == y && Are(x.Filled, y.Filled)
        : a == b;

    private static bool Are(Prescription a, Prescription b) =>
        a with { Targets = b.Targets, Ramp = b.Ramp, Why = b.Why, Search = b.Search } == b
        && Are(a.Why, b.Why) && a.Targets.SequenceEqual(b.Targets) && a.Ramp.SequenceEqual(b.Ramp) && Are(a.Search, b.Search);

    private static bool Are(SearchSpan? a, SearchSpan? b) => (a, b) is ({ } x, { } y)
        ? x with { Loads = y.Loads } == y && x.Loads.SequenceEqual(y.Loads)
        : a is null && b is null;

    private static bool Are(Reason a, Reason b) => a with { Inputs = b.Inputs } == b && a.Inputs.SequenceEqual(b.Inputs);

    private static bool All<T>(IReadOnlyList<T> a, IReadOnlyList<T> b, Func<T, T, bool> same) =>
        a.Count == b.Count && a.Zip(b).All(p => same(p.First, p.Second));
}
