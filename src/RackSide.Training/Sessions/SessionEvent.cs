using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>Something that reaches a session from outside. Events drive it and are not kept; facts are.</summary>
/// <param name="At">When.</param>
public abstract record SessionEvent(Instant At);

/// <summary>"Done as shown", "lift now", "write it": the obvious next thing.</summary>
public sealed record Accepted(Instant At) : SessionEvent(At);

/// <summary>A digit.</summary>
/// <param name="At">When.</param>
/// <param name="Digit">0 to 9.</param>
public sealed record DigitTyped(Instant At, int Digit) : SessionEvent(At);

/// <summary>The decimal mark, which takes back the last set where no number is being typed.</summary>
public sealed record PointTyped(Instant At) : SessionEvent(At);

/// <summary>One more: a rep, a step of load, 15 seconds.</summary>
public sealed record MoreAsked(Instant At) : SessionEvent(At);

/// <summary>One fewer: a rep, a step of load, 15 seconds.</summary>
public sealed record FewerAsked(Instant At) : SessionEvent(At);

/// <summary>The other number of the two, or the cue card where there is none.</summary>
public sealed record OtherAsked(Instant At) : SessionEvent(At);

/// <summary>The menu, or out of it.</summary>
public sealed record MenuAsked(Instant At) : SessionEvent(At);

/// <summary>Out of whatever lies over the session; never out of the session.</summary>
public sealed record BackAsked(Instant At) : SessionEvent(At);

/// <summary>Take back the last thing written.</summary>
public sealed record UndoAsked(Instant At) : SessionEvent(At);

/// <summary>Something to read.</summary>
/// <param name="At">When.</param>
/// <param name="What">What.</param>
public sealed record LeafAsked(Instant At, Leaf What) : SessionEvent(At);

/// <summary>A character, where letters are typed.</summary>
/// <param name="At">When.</param>
/// <param name="Character">Which.</param>
public sealed record TextTyped(Instant At, char Character) : SessionEvent(At);

/// <summary>The page from which one leaves.</summary>
public sealed record LeaveAsked(Instant At) : SessionEvent(At);

/// <summary>Time passed.</summary>
public sealed record Ticked(Instant At) : SessionEvent(At);

/// <summary>A key that means nothing anywhere.</summary>
public sealed record OddKey(Instant At) : SessionEvent(At);

/// <summary>A fact is on disk.</summary>
/// <param name="At">When.</param>
/// <param name="Fact">Which.</param>
public sealed record FactWritten(Instant At, FactId Fact) : SessionEvent(At);

/// <summary>A fact could not be written; it stays in memory.</summary>
/// <param name="At">When.</param>
/// <param name="Fact">Which.</param>
/// <param name="Sentence">What to tell the lifter.</param>
public sealed record WriteFailed(Instant At, FactId Fact, string Sentence) : SessionEvent(At);
