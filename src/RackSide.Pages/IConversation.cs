using NodaTime;

namespace RackSide.Pages;

/// <summary>What a press or a tick wants heard.</summary>
public enum Bell
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Get ready.</summary>
    Once,

    /// <summary>Go.</summary>
    Twice,
}

/// <summary>
/// A run of pages that keys lead through: the set-up, a session, a rest day. The screen that shows it knows nothing else
/// of RackSide. All members are called on one thread, but for <see cref="Wake"/>.
/// </summary>
public interface IConversation
{
    /// <summary>Set by the screen; the conversation calls it from any thread when something but a key or the clock changed.</summary>
    Action? Wake { get; set; }

    /// <summary>Whether the screen should close.</summary>
    bool Ended { get; }

    /// <summary>The page as it stands.</summary>
    Page Draw(PageSize size, Instant now);

    /// <summary>Takes a key.</summary>
    Bell Press(KeyPress key, Instant now);

    /// <summary>Lets time pass; called several times a second.</summary>
    Bell Tick(Instant now);
}
