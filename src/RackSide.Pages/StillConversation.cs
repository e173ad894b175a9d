using NodaTime;

namespace RackSide.Pages;

/// <summary>
/// A conversation in which nothing passes with time but a sentence, and that goes by itself: what stands before and after
/// the training. The stop signs lie over any of its pages.
/// </summary>
public abstract class StillConversation : IConversation
{
    private int? stopSigns;
    private Notice notice;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public abstract bool Ended { get; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => stopSigns is { } movedOn
        ? StopSignsPage.Draw(size, movedOn)
        : Draw(size, notice.At(now));

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        var open = stopSigns;
        stopSigns = open is { } movedOn ? StopSignsPage.Press(key, movedOn) : key.IsStopSigns() ? 0 : null;
        notice = Notice.Say(open is not null || stopSigns is not null ? null : Answer(key), now);
        return Bell.None;
    }

    /// <inheritdoc/>
    public virtual Bell Tick(Instant now) => Bell.None;

    /// <summary>The page, with a passing sentence or null.</summary>
    protected abstract Page Draw(PageSize size, string? said);

    /// <summary>Takes a key that is not for the stop signs.</summary>
    /// <returns>What is said to it; null for nothing.</returns>
    protected abstract string? Answer(KeyPress key);
}
