using RackSide.Training.Body;
using RackSide.Training.Measures;

namespace RackSide.Pages.RestDays;

/// <summary>
/// A rest day: it says so, why, and what comes next. Enter leaves; a digit asks for one of the other things. It ends
/// with the choice made; whoever acts on it may open it again with what was done.
/// </summary>
/// <param name="texts">What the page says.</param>
public sealed class RestDayConversation(RestDayTexts texts) : StillConversation
{
    private const string NothingTyped = "Nothing is typed yet; / goes back.";

    private static readonly ListLine[] Lines =
    [
        new("train anyway, an extra session"),
        new("body weight"),
        new("this week's page"),
        new("the next four weeks"),
        new("days away"),
        new("leave, nothing more today"),
        new("settings: screen, sound, keys"),
    ];

    private int chosen = Lines.Length - 2;
    private string? typed;

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <summary>What was asked for; null until something is.</summary>
    public RestDayChoice? Choice { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => ((typed is null ? Options() : Entry(typed)) with { Said = said }).Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => typed is null ? OnOptions(key) : OnEntry(typed, key);

    private string? OnOptions(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, Lines.Length);
        chosen = line ?? chosen;
        if (key.IsAccept() || (line is not null && key.Digit() is not null))
        {
            Take(chosen);
        }

        return line is null ? Notice.DeadKey : null;
    }

    private void Take(int line)
    {
        Choice = line switch
        {
            0 => new RestDayChoice.TrainAnyway(),
            2 => new RestDayChoice.WeekPage(),
            3 => new RestDayChoice.CalendarPage(),
            4 => new RestDayChoice.AwayPage(),
            5 => new RestDayChoice.Leave(),
            6 => new RestDayChoice.Settings(),
            _ => null,
        };
        typed = line == 1 ? "" : null;
    }

    private string? OnEntry(string soFar, KeyPress key)
    {
        if (key.IsAccept())
        {
            return Write(soFar);
        }

        var next = key.IsBack() ? null : EntryPage.TypeNumber(soFar, key) ?? soFar;
        typed = next;
        return next == soFar ? Notice.DeadKey : null;
    }

    private string? Write(string soFar)
    {
        var mass = BodyWeightEntry.Read(soFar, texts.Unit);
        Choice = mass is { } read ? new RestDayChoice.Weigh(read) : null;
        return mass is not null ? null : soFar.Length == 0 ? NothingTyped : BodyWeightEntry.Refusal(texts.Unit);
    }

    private BodyPage Options() => new ListPage($"{texts.Title}  {texts.Today}", Lines, chosen)
    {
        Place = texts.Done ?? "",
        Above = [texts.Why, $"Next: {texts.Next}: {texts.Holds}."],
        Hints = [new("ENTER", "choose"), new("1-7", "at once"), new("+ -", "up, down"), new("!", "stop signs")],
    };

    private BodyPage Entry(string soFar) => new EntryPage($"{texts.Title}  {texts.Today}", "Body weight today?", soFar, EntryPage.NumberRoom)
    {
        Unit = texts.Unit.Symbol(),
        Below = "Same scales, same time of day.",
        Hints = [new("ENTER", "write it"), new("0-9 .", "type"), new("/", "back"), new("!", "stop signs")],
    };
}
