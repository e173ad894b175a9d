using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.History;

/// <summary>Why a lifter is away.</summary>
public enum AwayFor
{
    /// <summary>A holiday or a journey.</summary>
    Holiday,

    /// <summary>An illness.</summary>
    Illness,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>Told outside a session: days on which nobody trains.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was told.</param>
/// <param name="From">The first day away.</param>
/// <param name="Until">The last day away, not before <paramref name="From"/>; null while nobody knows.</param>
/// <param name="For">Why.</param>
public sealed record AwayTold(FactId Id, Instant At, LocalDate From, LocalDate? Until, AwayFor For) : Fact(Id, At);

/// <summary>Told outside a session: a motion hurt or felt wrong. It says what to spare, and is no diagnosis.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was told.</param>
/// <param name="On">The day.</param>
/// <param name="Motion">The motion to spare.</param>
public sealed record SoreTold(FactId Id, Instant At, LocalDate On, Motion Motion) : Fact(Id, At);

/// <summary>Told outside a session: a set the lifter did somewhere else not long ago, to begin from.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was told.</param>
/// <param name="On">The day it was told; it is taken as recent then.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Reps">Reps done with honest form; 1 or more.</param>
/// <param name="Load">The load.</param>
public sealed record SetKnown(FactId Id, Instant At, LocalDate On, string Exercise, int Reps, Mass Load) : Fact(Id, At);
