using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.History;

/// <summary>
/// What is known of a session without reading it: enough for the calendar, and to tell which sessions today's plan needs
/// whole. Made of a session by <c>LookBack</c>, and made anew whenever the session changes.
/// </summary>
/// <param name="Id">The session's identity.</param>
/// <param name="Lifter">The lifter's key.</param>
/// <param name="Date">The day it belongs to, mended or not.</param>
/// <param name="DayKey">The training day's key.</param>
/// <param name="Kind">Strength or skills.</param>
public sealed record SessionCard(FactId Id, string Lifter, LocalDate Date, string DayKey, DayKind Kind)
{
    /// <summary>Whether it counts as a day trained.</summary>
    public bool Trained { get; init; }

    /// <summary>Whether it is over.</summary>
    public bool Closed { get; init; }

    /// <summary>The motions trained in it.</summary>
    public IReadOnlyList<Motion> Motions { get; init; } = [];

    /// <summary>What it tells the rules of progress of; the newest sessions that tell of a thing are the ones they read.</summary>
    public IReadOnlyList<string> Tells { get; init; } = [];

    /// <summary>What was performed in it: the slot, and the exercise that filled it.</summary>
    public IReadOnlyList<(string Slot, string Exercise)> Performed { get; init; } = [];

    /// <summary>The loads that count for records, each once with its number of reps, in the order done.</summary>
    public IReadOnlyList<RepLoad> Loads { get; init; } = [];

    /// <summary>The body weight told in it last, and that fact's identity; null where none was told.</summary>
    public (FactId Id, Mass Weight)? Weighed { get; init; }
}

/// <summary>A load and how often it was lifted in one set.</summary>
/// <param name="Slot">The slot it was lifted in.</param>
/// <param name="Exercise">The exercise that filled it.</param>
/// <param name="Reps">How many, 1 to 12.</param>
/// <param name="Load">The load as told; of help, the help.</param>
public sealed record RepLoad(string Slot, string Exercise, int Reps, Mass Load);
