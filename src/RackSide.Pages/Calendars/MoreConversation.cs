using NodaTime;

namespace RackSide.Pages.Calendars;

/// <summary>What else there is on a training day before it begins.</summary>
public enum MoreChoice
{
    /// <summary>Back to the plan.</summary>
    Back,

    /// <summary>There is less time than the plan takes.</summary>
    LessTime,

    /// <summary>The whole plan again.</summary>
    WholePlan,

    /// <summary>Other variants of the same motions, drawn for variety.</summary>
    Play,

    /// <summary>The next four weeks.</summary>
    Calendar,

    /// <summary>Days away.</summary>
    Away,

    /// <summary>A check-in: body weight, sleep, food.</summary>
    CheckIn,

    /// <summary>The page of the body.</summary>
    Body,

    /// <summary>What the gym owns.</summary>
    Kit,

    /// <summary>The bar shared with another lifter.</summary>
    Share,

    /// <summary>The settings of the screen, the sound and the keys.</summary>
    Settings,

    /// <summary>What was done, exercise by exercise.</summary>
    LookBack,
}

/// <summary>A short list behind today's plan.</summary>
/// <param name="title">The day.</param>
/// <param name="trimmed">Whether the plan was made shorter already, so that the whole one can be had back.</param>
/// <param name="hidden">Whether body weight, food and sleep are hidden.</param>
/// <param name="plays">Whether the day is one on which variants can be drawn.</param>
/// <param name="partners">The lifters with whom the bar can be shared today; at most four are offered.</param>
public sealed class MoreConversation(
    string title, bool trimmed, bool hidden = false, bool plays = false, IReadOnlyList<string>? partners = null) : StillConversation
{
    private const int MostPartners = 4;

    private readonly (string Text, MoreChoice Choice)[] lines =
    [
        ("less time: make today's plan shorter", MoreChoice.LessTime),
        .. trimmed ? new[] { ("the whole plan again", MoreChoice.WholePlan) } : [],
        .. plays ? new[] { ("play: draw other variants of the same motions", MoreChoice.Play) } : [],
        .. (partners ?? []).Take(MostPartners).Select(p => ($"share the bar with {p}", MoreChoice.Share)),
        ("the next four weeks", MoreChoice.Calendar),
        ("days away", MoreChoice.Away),
        .. hidden ? [] : new[] { ("check-in: body weight, sleep, food", MoreChoice.CheckIn), ("body: weight, food, sleep", MoreChoice.Body) },
        ("this gym's kit", MoreChoice.Kit),
        ("settings: screen, sound, keys", MoreChoice.Settings),
        ("look back: each exercise", MoreChoice.LookBack),
        ("back to the plan", MoreChoice.Back),
    ];

    private int chosen;

    /// <summary>What was chosen; null until something is.</summary>
    public MoreChoice? Choice { get; private set; }

    /// <summary>Which of the partners, from 0, where the bar is to be shared.</summary>
    public int Partner => chosen - lines.TakeWhile(l => l.Choice != MoreChoice.Share).Count();

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage(title, [.. lines.Select(l => new ListLine(l.Text))], chosen)
    {
        Hints = [new("ENTER", "choose"), new($"1-{Math.Min(9, lines.Length)}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, lines.Length);
        chosen = line ?? chosen;
        Choice = key.IsBack() ? MoreChoice.Back
            : KeyTable.VerbOf(key) == Verb.LookBack ? MoreChoice.LookBack
            : key.IsAccept() || (line is not null && key.Digit() is not null) ? lines[chosen].Choice
            : null;
        return line is null && Choice is null ? Notice.DeadKey : null;
    }
}
