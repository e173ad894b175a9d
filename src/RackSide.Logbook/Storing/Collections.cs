namespace RackSide.Logbook.Storing;

/// <summary>The log's collections.</summary>
internal static class Collections
{
    /// <summary>One document: the log's word on itself.</summary>
    public const string About = "about";

    /// <summary>One document: the register, made of the others.</summary>
    public const string Register = "register";

    /// <summary>A document a lifter.</summary>
    public const string Lifters = "lifters";

    /// <summary>A document a session.</summary>
    public const string Sessions = "sessions";

    /// <summary>A document a body weight told outside a session.</summary>
    public const string Weights = "weights";

    /// <summary>A document a fact told outside a session.</summary>
    public const string Told = "told";

    /// <summary>One document, in backups alone: the file of house rules as it was then.</summary>
    public const string HouseRules = "rules";

    /// <summary>A document for how this rack stands with its gym, and one for each thing kept for the exchange; none on a rack alone.</summary>
    public const string Racks = "racks";

    /// <summary>Those that hold what was written.</summary>
    public static readonly IReadOnlyList<string> Kept = [Lifters, Sessions, Weights, Told, Racks];
}
