using NodaTime;

namespace RackSide.Pages;

/// <summary>
/// A conversation in which nothing passes with time but a sentence, and that goes by itself: what stands before and after
/// the training. The stop signs and the keys lie over any of its pages.
/// </summary>
public abstract class StillConversation : IConversation
{
    private readonly Aside aside = new();
    private Notice notice;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public abstract bool Ended { get; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => aside.Draw(size) ?? Draw(size, notice.At(now));

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        notice = Notice.Say(aside.Takes(key, () => Types(key)) ? null : Answer(key), now);
        return Bell.None;
    }

    /// <inheritdoc/>
    public virtual Bell Tick(Instant now) => Bell.None;

    /// <summary>Whether a key is typed here, whatever it means elsewhere.</summary>
    protected virtual bool Types(KeyPress key) => key.IsLetter() && Draw(PageSize.ToRead, said: null).Tells.TakesLetters;

    /// <summary>The page, with a passing sentence or null.</summary>
    protected abstract Page Draw(PageSize size, string? said);

    /// <summary>Takes a key that is not for what lies over the page.</summary>
    /// <returns>What is said to it; null for nothing.</returns>
    protected abstract string? Answer(KeyPress key);
}
