using NodaTime;
using RackSide.Training.Summary;

namespace RackSide.Pages.Rack;

/// <summary>The week page by itself; any key leaves it, but those for what is read over it.</summary>
/// <param name="week">The week.</param>
public sealed class WeekConversation(WeekSummary week) : IConversation
{
    private readonly Aside aside = new();

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
        WeekPage.Draw(canvas, week);
        Frame.Keys(canvas, new KeyHint("any key", "back"), new KeyHint("?", "the keys"), new KeyHint("!", "stop signs"));
        return canvas.Done();
    }

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        Ended = !aside.Takes(key);
        return Bell.None;
    }

    /// <summary>Nothing passes with time here.</summary>
    public Bell Tick(Instant now) => Bell.None;
}
