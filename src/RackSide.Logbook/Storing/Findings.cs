namespace RackSide.Logbook.Storing;

/// <summary>What is found while a logbook is opened; gathered step by step, told once at the end.</summary>
internal sealed class Findings
{
    private readonly List<string> putAside = [];

    /// <summary>There was no logbook.</summary>
    public bool Begun { get; set; }

    /// <summary>What was wrong with the log: <c>damaged</c> or <c>missing</c>; null where nothing was.</summary>
    public string? Log { get; set; }

    /// <summary>What was wrong with the journal: <c>missing</c>, <c>unreadable</c> or <c>damaged</c>, which is in part; null where nothing was.</summary>
    public string? Journal { get; set; }

    /// <summary>What was wrong with the copy; null where nothing was.</summary>
    public string? Copy { get; set; }

    /// <summary>Whether the last record of the journal is none.</summary>
    public bool Torn { get; set; }

    /// <summary>How many writes are lost; null where nobody can tell.</summary>
    public long? Lost { get; set; } = 0;

    /// <summary>A file was kept under another name.</summary>
    public void Keep(string name) => putAside.Add(name);

    /// <summary>The report.</summary>
    public OpenReport Report() => new(Condition, Lost, putAside, Sentence());

    private Condition Condition => Begun ? Condition.Begun
        : Log is not null ? Condition.Rebuilt
        : Journal is not null || Copy is not null ? Condition.Mended
        : Condition.Sound;

    private string? Sentence()
    {
        var told = string.Join(' ', new[] { Found(), Loss(), Kept() }.Where(s => s is not null));
        return told.Length == 0 ? null : told;
    }

    private string? Found() => (Log, Journal, Copy) switch
    {
        (not null, not null, not null) => $"The log file was {Log}, its copy was {Copy} and its journal {Journal}; what could be read was kept.",
        (not null, not null, null) => $"The log file was {Log} and its journal {Journal}; the log was rebuilt from the last copy.",
        (not null, null, not null) => $"The log file was {Log} and its copy {Copy}; the log was rebuilt from the journal.",
        (not null, null, null) => $"The log file was {Log}; it was rebuilt from the last copy and the journal.",
        (null, "missing" or "unreadable", _) => $"The log's journal was {Journal} and was begun again; the log itself is whole. "
            + "Only if the disk was full last time, check the last session.",
        (null, not null, _) => $"The log's journal was {Journal}; the log itself is whole, and the journal was begun again.",
        (null, null, not null) => $"The log's copy was {Copy} and was made again; the log itself is whole.",
        _ => null,
    };

    private string? Loss() => (Lost, Torn) switch
    {
        (null, _) => "What was written since that copy may be lost: check the last session.",
        (1, _) => "One entry could not be brought back: check the last session.",
        ( > 1, _) => $"{Lost} entries could not be brought back: check the last session.",
        (_, true) => "One entry was still being written when RackSide stopped and is not in the log: check the last set.",
        _ => Log is not null ? "No set is lost." : null,
    };

    private string? Kept() => putAside.Count == 0
        ? null
        : $"{(putAside.Count == 1 ? "The broken file is" : "The broken files are")} kept as {string.Join(" and ", putAside)}.";
}
