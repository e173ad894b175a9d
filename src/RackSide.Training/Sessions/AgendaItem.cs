using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;
using RackSide.Training.Safety;

namespace RackSide.Training.Sessions;

/// <summary>One thing the session asks for: a set, a hold, a tick. A lifter sees one at a time.</summary>
/// <param name="Key">Its name within the session: the slot, what it is, and its number.</param>
public abstract record AgendaItem(string Key);

/// <summary>A do-confirm item before the first loaded set.</summary>
/// <param name="Check">What is confirmed.</param>
public sealed record ConfirmItem(CheckItem Check) : AgendaItem($"check/{Check.Key}");

/// <summary>Something of a slot.</summary>
/// <param name="Key">Its name within the session.</param>
/// <param name="Asked">What the slot asks for today.</param>
public abstract record SlotItem(string Key, Prescription Asked) : AgendaItem(Key)
{
    /// <summary>The slot's key.</summary>
    public string Slot => Asked.Slot;
}

/// <summary>Something of a slot that is done as a set and counted.</summary>
/// <param name="Asked">What the slot asks for today.</param>
/// <param name="Kind">What the set is for.</param>
/// <param name="Number">1 for the first of that kind in the slot.</param>
/// <param name="Of">How many of that kind there are.</param>
/// <param name="Target">Reps or seconds asked for.</param>
/// <param name="Load">The load asked for, or null.</param>
public abstract record SetItem(Prescription Asked, SetKind Kind, int Number, int Of, int Target, Mass? Load)
    : SlotItem($"{Asked.Slot}/{Kind}{Number}", Asked);

/// <summary>A warm-up set.</summary>
public record RampItem(Prescription Asked, int Number, int Of, int Target, Mass? Load)
    : SetItem(Asked, SetKind.WarmUp, Number, Of, Target, Load);

/// <summary>A set of the search for a first load, which stands in place of a ramp.</summary>
public sealed record SearchItem(Prescription Asked, int Number, int Target, Mass? Load)
    : RampItem(Asked, Number, LoadSearch.MostTries, Target, Load);

/// <summary>The question after a search set: how many more good reps were left?</summary>
/// <param name="Asked">What the slot asks for today.</param>
/// <param name="Number">The number of the search set.</param>
/// <param name="Set">The search set's fact.</param>
public sealed record AskItem(Prescription Asked, int Number, FactId Set) : SlotItem($"{Asked.Slot}/Left{Number}", Asked);

/// <summary>A working set told in reps.</summary>
public sealed record WorkItem(Prescription Asked, int Number, int Of, int Target, Mass? Load)
    : SetItem(Asked, SetKind.Working, Number, Of, Target, Load);

/// <summary>A working set told in seconds.</summary>
public sealed record HoldItem(Prescription Asked, int Number, int Of, int Target, Mass? Load)
    : SetItem(Asked, SetKind.Hold, Number, Of, Target, Load)
{
    /// <summary>The side it is done on; null where both sides work together.</summary>
    public Side? Side { get; init; }

    /// <summary>The same hold on one side.</summary>
    internal HoldItem On(Side side) => this with { Side = side, Key = $"{Key}/{side}" };
}

/// <summary>A total, worked off in as many shares as it takes.</summary>
/// <param name="Asked">What the slot asks for today.</param>
/// <param name="Total">The reps in all.</param>
public sealed record TotalItem(Prescription Asked, int Total) : SlotItem($"{Asked.Slot}/total", Asked);

/// <summary>Seconds in all, in as many holds or goes as it takes.</summary>
/// <param name="Asked">What the slot asks for today.</param>
/// <param name="Total">The seconds in all.</param>
public sealed record AccumulateItem(Prescription Asked, int Total) : SlotItem($"{Asked.Slot}/accumulate", Asked);

/// <summary>Something to do and tick off.</summary>
/// <param name="Asked">What the slot asks for today.</param>
/// <param name="Minutes">About how long; 0 for no guide.</param>
public sealed record TickItem(Prescription Asked, int Minutes) : SlotItem($"{Asked.Slot}/tick", Asked);
