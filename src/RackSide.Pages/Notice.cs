using NodaTime;

namespace RackSide.Pages;

/// <summary>One sentence that goes away by itself.</summary>
/// <param name="Text">The sentence; null says nothing.</param>
/// <param name="Until">When it is gone.</param>
public readonly record struct Notice(string? Text, Instant Until)
{
    /// <summary>How long a sentence stands.</summary>
    public static Duration Stands { get; } = Duration.FromSeconds(2);

    /// <summary>What is said to a key that means nothing here.</summary>
    public const string DeadKey = "That key does nothing here; ? tells the keys.";

    /// <summary>A sentence said now.</summary>
    public static Notice Say(string? text, Instant now) => new(text, now + Stands);

    /// <summary>The sentence while it stands, else null.</summary>
    public string? At(Instant now) => now < Until ? Text : null;
}
