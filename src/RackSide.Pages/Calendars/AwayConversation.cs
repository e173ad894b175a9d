using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Calendars;

/// <summary>What the page of days away is told.</summary>
/// <param name="Today">Today.</param>
/// <param name="Told">Days away that stand, at most six.</param>
/// <param name="Refusal">Why days cannot be told, in one sentence; null where they can.</param>
/// <param name="Done">What was done on this page already; empty for nothing.</param>
public sealed record AwayTexts(
    LocalDate Today, IReadOnlyList<AwayTold> Told, Func<LocalDate, LocalDate?, string?> Refusal, string Done = "");

/// <summary>
/// Days away: new ones are typed in two dates and a reason, those told stand in a list and can be taken back, and somebody
/// who is away today can say that they are back. It ends with the choice made.
/// </summary>
/// <param name="texts">What it shows.</param>
public sealed class AwayConversation(AwayTexts texts) : StillConversation
{
    private const string Title = "DAYS AWAY";
    private static readonly AwayFor[] Reasons = [AwayFor.Holiday, AwayFor.Illness, AwayFor.Other];

    private readonly bool awayToday = texts.Told.Any(a => new DaysAway(a.From, a.Until).Holds(texts.Today));
    private Asking asking = Asking.What;
    private int chosen;
    private string typed = "";
    private LocalDate from;
    private LocalDate? until;

    private enum Asking
    {
        What,
        From,
        Until,
        Why,
    }

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <summary>What was said; null until something is.</summary>
    public AwayChoice? Choice { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => (View() with { Said = said }).Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => asking is Asking.From or Asking.Until ? OnEntry(key) : OnList(key);

    private BodyPage View() => asking switch
    {
        Asking.From => Entry("The first day away?", "today"),
        Asking.Until => Entry("The last day away?", "not known: until you say that you are back"),
        Asking.Why => new ListPage(Title, [new("a holiday or a journey"), new("an illness"), new("anything else")], chosen)
        {
            Above = [$"Away {(until is { } last ? $"{from.Short()} to {last.Shown()}" : $"from {from.Shown()} on")}. Why?", "After an illness begin again only when you are well; ask a clinician where in doubt."],
            Hints = Hints("choose"),
        },
        _ => new ListPage(Title, [.. Lines()], chosen)
        {
            Place = texts.Done,
            Above = ["Days away are neither due nor missed. On return strength comes first, and lighter by the days gone."],
            Hints = Hints("choose"),
        },
    };

    private EntryPage Entry(string question, string empty) => new(Title, question, typed, DateEntry.Room)
    {
        Unit = DateTyping.Shown(typed, Near),
        Below = $"Day.month, such as 20.12 or 20.12.2026. ENTER alone: {empty}.",
        Hints = [new("ENTER", "go on"), new("0-9 .", "type"), new("/", "back"), new("!", "stop signs")],
    };

    private static IReadOnlyList<KeyHint> Hints(string accept) => [new("ENTER", accept), new("1-9", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")];

    private IEnumerable<ListLine> Lines() =>
    [
        new("new days away"),
        .. awayToday ? new ListLine[] { new("I am back today") } : [],
        .. texts.Told.Select(a => new ListLine($"take back: {AwayText.Of(a)}")),
        new("back"),
    ];

    // A date without a year is the one nearest to the first day away, or to today.
    private LocalDate Near => asking == Asking.Until && from > texts.Today ? from : texts.Today;

    private string? OnList(KeyPress key)
    {
        var count = asking == Asking.Why ? Reasons.Length : Lines().Count();
        if (key.IsBack())
        {
            return GoBack();
        }

        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, count);
        chosen = line ?? chosen;
        if (key.IsAccept() || (line is not null && key.Digit() is not null))
        {
            Take(chosen, count);
        }

        return line is null ? Notice.DeadKey : null;
    }

    private void Take(int line, int count)
    {
        if (asking == Asking.Why)
        {
            Choice = new AwayChoice.Tell(from, until, Reasons[line]);
            return;
        }

        var told = line - (awayToday ? 2 : 1);
        Choice = line == count - 1 ? new AwayChoice.Leave()
            : awayToday && line == 1 ? new AwayChoice.BackAgain()
            : line > 0 ? new AwayChoice.TakeBack(texts.Told[told])
            : null;
        asking = line == 0 ? Asking.From : asking;
    }

    private string? GoBack()
    {
        Choice = asking == Asking.What ? new AwayChoice.Leave() : null;
        (asking, chosen, typed) = (asking == Asking.Why ? Asking.Until : Asking.What, 0, "");
        return null;
    }

    private string? OnEntry(KeyPress key)
    {
        if (key.IsBack())
        {
            (asking, typed, chosen) = (asking == Asking.Until ? Asking.From : Asking.What, "", 0);
            return null;
        }

        if (key.IsAccept())
        {
            return Enter();
        }

        var next = DateTyping.After(typed, key);
        typed = next ?? typed;
        return next is null ? Notice.DeadKey : null;
    }

    private string? Enter()
    {
        var date = DateEntry.Read(typed, Near);
        if (date is null && typed.Length > 0)
        {
            return DateEntry.Refusal(typed);
        }

        var first = asking == Asking.From ? date ?? texts.Today : from;
        var last = asking == Asking.Until ? date : null;
        if (texts.Refusal(first, last) is { } refusal)
        {
            return refusal;
        }

        (from, until, typed, chosen) = (first, last, "", 0);
        asking = asking == Asking.From ? Asking.Until : Asking.Why;
        return null;
    }
}
