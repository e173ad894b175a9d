namespace RackSide.Logbook;

/// <summary>How a logbook was found.</summary>
public enum Condition
{
    /// <summary>As it was left, or after a kill or a power cut that lost nothing.</summary>
    Sound,

    /// <summary>There was none; a new one was begun.</summary>
    Begun,

    /// <summary>The log was whole, the journal or the copy beside it was not; all are whole again.</summary>
    Mended,

    /// <summary>The log was damaged or missing and was rebuilt.</summary>
    Rebuilt,
}

/// <summary>What opening a logbook found and did.</summary>
/// <param name="Condition">How it was found.</param>
/// <param name="Lost">
/// How many writes (facts, session beginnings, lifters, weigh-ins) are lost; null where several files failed at once and
/// nobody can tell. 0 is the rule.
/// </param>
/// <param name="PutAside">Damaged files that were kept, by name.</param>
/// <param name="Sentence">What to tell the lifter; null where there is nothing to tell.</param>
public sealed record OpenReport(Condition Condition, long? Lost, IReadOnlyList<string> PutAside, string? Sentence);
