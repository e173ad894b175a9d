using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.History;

/// <summary>Something that happened, mostly during a session, and is kept. A fact is never deleted, only corrected by a later one.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it happened.</param>
public abstract record Fact(FactId Id, Instant At);

/// <summary>A set was done.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was accepted, which is when the rest after it began.</param>
/// <param name="Slot">The slot's key.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Kind">What it was for.</param>
/// <param name="Number">1 for the first set of that kind in the slot.</param>
/// <param name="Target">The reps or seconds asked for.</param>
/// <param name="Done">The reps or seconds done; 0 is a set tried and missed.</param>
/// <param name="Load">The load as it was on the bar; null where the exercise has none.</param>
public sealed record SetDone(
    FactId Id, Instant At, string Slot, string Exercise, SetKind Kind, int Number, int Target, int Done, Mass? Load) : Fact(Id, At)
{
    /// <summary>The side of a hold that is told side by side; null for every other set.</summary>
    public Side? Side { get; init; }
}

/// <summary>A fact was taken back. What it named still happened to be written, so it stays in the logbook.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Struck">The fact taken back; striking a strike is not done, the set is simply done again.</param>
public sealed record FactStruck(FactId Id, Instant At, FactId Struck) : Fact(Id, At);

/// <summary>A set's form was told to have slipped (or, told again, to have held): it counts as done, not as earned.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Set">The set's fact.</param>
/// <param name="Slipped">Whether the form slipped; the latest word counts.</param>
public sealed record FormTold(FactId Id, Instant At, FactId Set, bool Slipped) : Fact(Id, At);

/// <summary>How many more good reps were left after a set, as the lifter felt it. A beginner's guess, so it decides no more than where to begin.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Set">The set's fact.</param>
/// <param name="Left">Reps in reserve; 0 or more.</param>
public sealed record RepsLeftTold(FactId Id, Instant At, FactId Set, int Left) : Fact(Id, At);

/// <summary>Another exercise fills a slot from here on, in this session only.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Slot">The slot's key.</param>
/// <param name="Filled">What it asks for now, with its own load and reason.</param>
public sealed record ExerciseSwapped(FactId Id, Instant At, string Slot, Prescription Filled) : Fact(Id, At);

/// <summary>A running rest was made longer or shorter, or held.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Ends">When the rest now ends; null while its clock is held.</param>
/// <param name="Left">What was left at <paramref name="At"/>.</param>
public sealed record RestChanged(FactId Id, Instant At, Instant? Ends, Duration Left) : Fact(Id, At);

/// <summary>A do-confirm item or a checklist item was ticked.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Item">The item's key: a slot, or a name of Safety.</param>
public sealed record ItemTicked(FactId Id, Instant At, string Item) : Fact(Id, At);

/// <summary>A slot, or what remained of it, was left out. That is not a miss.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Slot">The slot's key.</param>
public sealed record SlotLeftOut(FactId Id, Instant At, string Slot) : Fact(Id, At);

/// <summary>The question before head-down work was answered. What made the answer is not asked and not kept: RackSide stores no diagnosis.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Floor">Whether floor work takes the place of head-down work from here on; where not, the way down was taught.</param>
public sealed record HeadDownAnswered(FactId Id, Instant At, bool Floor) : Fact(Id, At);

/// <summary>A body weight was told.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="Weight">As the scale showed it.</param>
public sealed record BodyWeighed(FactId Id, Instant At, Mass Weight) : Fact(Id, At);

/// <summary>The session belongs to another date than the clock said when it began; the latest word counts.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was told.</param>
/// <param name="Date">The date it belongs to.</param>
public sealed record SessionRedated(FactId Id, Instant At, LocalDate Date) : Fact(Id, At);

/// <summary>The session is over; nothing is added after this but a mending of its date.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
public sealed record SessionClosed(FactId Id, Instant At) : Fact(Id, At);
