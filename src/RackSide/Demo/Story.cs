using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Demo;

/// <summary>What happens to a lifter within the twelve weeks.</summary>
internal sealed record Story
{
    /// <summary>Gives the lifter, who joined at that instant.</summary>
    public required Func<NodaTime.Instant, Lifter> Joins { get; init; }

    /// <summary>What the body can do.</summary>
    public required Body Body { get; init; }

    /// <summary>The seed of everything left to chance.</summary>
    public required int Seed { get; init; }

    /// <summary>The hour of day that training begins at.</summary>
    public required int Hour { get; init; }

    /// <summary>The days spent away, counted from the first day, which is 0.</summary>
    public required Range Away { get; init; }

    /// <summary>Whether the last strength day is missed where today cannot be one of the pattern, so that it is due today.</summary>
    public bool OwesAStrengthDay { get; init; }

    /// <summary>What goes otherwise than planned, by the number of the strength day, the first being 1.</summary>
    public IReadOnlyDictionary<int, Incident> Incidents { get; init; } = new Dictionary<int, Incident>();

    /// <summary>How nights go, where they are told; null where they are not.</summary>
    public Nights? Nights { get; init; }

    /// <summary>A spell in which one motion goes badly.</summary>
    public Spell? Spell { get; init; }
}

/// <summary>Bad sleep, a hard time at work: a motion is weaker for some strength days.</summary>
/// <param name="Motion">Which.</param>
/// <param name="From">The first of those strength days.</param>
/// <param name="To">The last.</param>
/// <param name="Share">What is left of the strength.</param>
internal sealed record Spell(Motion Motion, int From, int To, double Share);

/// <summary>Something goes otherwise than planned, in a slot.</summary>
/// <param name="Slot">Which.</param>
internal abstract record Incident(string Slot)
{
    /// <summary>What the slot needs is taken: the first other exercise that is offered fills it today.</summary>
    public sealed record Taken(string Slot) : Incident(Slot);

    /// <summary>Time runs out: this exercise, then stop.</summary>
    public sealed record OutOfTime(string Slot) : Incident(Slot);

    /// <summary>The form of a working set slips, and the lifter says so.</summary>
    public sealed record Slip(string Slot, int Set) : Incident(Slot);

    /// <summary>A wrong number is typed for a working set, and taken back.</summary>
    public sealed record WrongNumber(string Slot, int Set) : Incident(Slot);
}
