using NodaTime;

namespace RackSide.Pages.Lifters;

/// <summary>One lifter on the page that asks who trains.</summary>
/// <param name="Name">The name.</param>
/// <param name="State">What waits for this lifter in a few words: <c>strength day</c>, <c>left open</c>, <c>rest day</c>.</param>
public sealed record WhoLine(string Name, string State);

/// <summary>What was chosen on that page.</summary>
public abstract record WhoChoice
{
    private WhoChoice()
    {
    }

    /// <summary>A lifter.</summary>
    /// <param name="Index">Which, from 0.</param>
    public sealed record Trains(int Index) : WhoChoice;

    /// <summary>The names that this page has no digits for.</summary>
    public sealed record Others : WhoChoice;

    /// <summary>The other things a household does here.</summary>
    public sealed record Household : WhoChoice;
}

/// <summary>
/// Who trains: the first page of a rack that several share. A digit takes a name at once; the marked one is taken by ENTER.
/// It never ends by itself and cannot be left, because there is nothing behind it.
/// </summary>
/// <param name="today">The date as shown.</param>
/// <param name="lines">Who trains here, at most nine.</param>
/// <param name="told">What stands under the names for good: trouble with the logbook, NumLock; empty for nothing.</param>
public sealed class WhoConversation(string today, IReadOnlyList<WhoLine> lines, string told) : StillConversation
{
    /// <summary>The most names, so that one digit reaches each.</summary>
    public const int Most = 9;

    /// <summary>What is said to a key that the pad sends only while NumLock is off.</summary>
    public const string NumLockIsOff = "NumLock is off: press Num on the pad, then its digits type again.";

    private const string NothingBehind = "There is nothing behind this page; choose a name.";
    private const string NoSuchName = "No name has that digit.";

    private int chosen;

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <summary>What was chosen; null until something is.</summary>
    public WhoChoice? Choice { get; private set; }

    /// <summary>What is asked.</summary>
    public string Title { get; init; } = "WHO TRAINS?";

    /// <summary>What lies behind <c>/</c>.</summary>
    public string Behind { get; init; } = "more";

    /// <summary>Whether there are more names than digits; 0 then turns to the next of them.</summary>
    public bool Others { get; init; }

    /// <summary>Gives one word on the exchange with the other racks of the gym; null where there are none.</summary>
    public Func<string?> Shared { get; init; } = () => null;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage(Title, [.. lines.Select(l => new ListLine(l.Name, Value: l.State))], chosen)
    {
        Place = Shared() is { } word ? $"{word}  {today}".TrimEnd() : today,
        Above = [told],
        Hints = [new("ENTER", "this one"), new($"1-{lines.Count}", "at once"), .. Others ? [new KeyHint("0", "other names")] : Array.Empty<KeyHint>(), new("+ -", "up, down"), new("/", Behind), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        if (key.IsBack())
        {
            Choice = key.Code == KeyCode.Escape ? null : new WhoChoice.Household();
            return Choice is null ? NothingBehind : null;
        }

        if (Others && key.Digit() == 0)
        {
            Choice = new WhoChoice.Others();
            return null;
        }

        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, lines.Count);
        chosen = line ?? chosen;
        Choice = key.IsAccept() || (line is not null && key.Digit() is not null) ? new WhoChoice.Trains(chosen) : null;
        return line is not null ? null : Refusal(key);
    }

    // With NumLock off, 8 and 2 still move the mark; the others give themselves away.
    private static string Refusal(KeyPress key) => key.Code switch
    {
        KeyCode.Home or KeyCode.End or KeyCode.PageUp or KeyCode.PageDown or KeyCode.Insert or KeyCode.Delete or KeyCode.Left or KeyCode.Right => NumLockIsOff,
        _ => key.Digit() is null ? Notice.DeadKey : NoSuchName,
    };
}
