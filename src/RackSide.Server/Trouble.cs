namespace RackSide.Server;

/// <summary>What can be wrong between a rack and its gym; the rack's program makes an exit code of it.</summary>
internal enum TroubleKind
{
    /// <summary>Nobody answers, or no longer.</summary>
    Unreachable,

    /// <summary>The certificate is not one to be trusted, is out of date, or is another machine's.</summary>
    Certificate,

    /// <summary>Password, role or rights.</summary>
    Rights,

    /// <summary>No such database, or no gym in it.</summary>
    Missing,

    /// <summary>The gym was made by another version.</summary>
    Version,

    /// <summary>The connection cannot be understood, or holds what it must not.</summary>
    Connection,

    /// <summary>Something else that the server said.</summary>
    Other,
}

/// <summary>One sentence of what is wrong and what to do about it. It never holds a password.</summary>
internal sealed class Trouble(TroubleKind kind, string sentence, Exception? inner = null) : Exception(sentence, inner)
{
    /// <summary>Of which kind.</summary>
    public TroubleKind Kind { get; } = kind;
}
