using NodaTime;

namespace RackSide.Pages;

/// <summary>What a page says of itself to whoever reads it line by line and cannot see it change.</summary>
public readonly record struct Telling()
{
    /// <summary>What the page is about; another word is another page. Empty where a page changes by keys only.</summary>
    public string Topic { get; init; } = "";

    /// <summary>What becomes so by itself within one topic: a hold that begins, a target that is met; empty for nothing.</summary>
    public string State { get; init; } = "";

    /// <summary>What a running clock has left; null where none runs down.</summary>
    public Duration? Left { get; init; }

    /// <summary>Whether something is typed that ENTER would take.</summary>
    public bool Typing { get; init; }

    /// <summary>Whether letters are typed here and mean no verbs.</summary>
    public bool TakesLetters { get; init; }

    /// <summary>Whether the world has not answered yet, so that the page will say another thing in a moment.</summary>
    public bool Pending { get; init; }
}
