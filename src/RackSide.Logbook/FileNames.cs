namespace RackSide.Logbook;

/// <summary>What lies in a logbook's folder.</summary>
internal static class FileNames
{
    /// <summary>Held while a process has the logbook open.</summary>
    public const string Lock = "log.lock";

    /// <summary>The log.</summary>
    public const string Main = "log.db";

    /// <summary>The engine's own write-ahead log beside the log.</summary>
    public const string WriteAhead = "log-log.db";

    /// <summary>Every write since the copy.</summary>
    public const string Journal = "log.journal";

    /// <summary>The log as it was when last verified.</summary>
    public const string Copy = "copy.db";
}
