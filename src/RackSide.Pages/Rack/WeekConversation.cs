using NodaTime;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>
/// The week page by itself; plus and minus read on where the page is too small for all, and any other key leaves it but those
/// for what is read over it.
/// </summary>
/// <param name="week">The week.</param>
public sealed class WeekConversation(WeekSummary week) : IConversation
{
    private readonly Aside aside = new();
    private int movedOn;
    private int unseen;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now)
    {
        if (aside.Draw(size) is { } over)
        {
            return over;
        }

        var canvas = new Canvas(size);
        unseen = WeekPage.Draw(canvas, week, Frame.Bottom(size), movedOn);
        Frame.Keys(canvas, [new KeyHint("any key", "back"), .. unseen > 0 ? [new KeyHint("+ -", "read on")] : Array.Empty<KeyHint>(), new("?", "the keys"), new("!", "stop signs")]);
        return canvas.Done();
    }

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (aside.Takes(key))
        {
            return Bell.None;
        }

        if (unseen > 0 && TextPage.Move(key, Math.Min(movedOn, unseen)) is { } moved)
        {
            movedOn = Math.Min(moved, unseen);
        }
        else
        {
            Ended = true;
        }

        return Bell.None;
    }

    /// <summary>Nothing passes with time here.</summary>
    public Bell Tick(Instant now) => Bell.None;
}
