namespace RackSide.Pages.RestDays;

/// <summary>
/// A rest day: it says so, why, and what comes next. Enter leaves; a digit asks for one of the other things. It ends
/// with the choice made; whoever acts on it may open it again with what was done.
/// </summary>
/// <param name="texts">What the page says.</param>
public sealed class RestDayConversation(RestDayTexts texts) : StillConversation
{
    private readonly (string Text, RestDayChoice Choice)[] lines =
    [
        ("train anyway, an extra session", new RestDayChoice.TrainAnyway()),
        .. texts.Hidden ? [] : new (string, RestDayChoice)[] { ("check-in: body weight, sleep, food", new RestDayChoice.CheckIn()) },
        ("this week's page", new RestDayChoice.WeekPage()),
        ("the next four weeks", new RestDayChoice.CalendarPage()),
        ("days away", new RestDayChoice.AwayPage()),
        .. texts.Hidden ? [] : new (string, RestDayChoice)[] { ("body: weight, food, sleep", new RestDayChoice.BodyPage()) },
        ("this gym's kit", new RestDayChoice.KitPage()),
        ("settings: screen, sound, keys", new RestDayChoice.Settings()),
        ("leave, nothing more today", new RestDayChoice.Leave()),
    ];

    private int? moved;

    private int Chosen => moved ?? lines.Length - 1;

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <summary>What was asked for; null until something is.</summary>
    public RestDayChoice? Choice { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage($"{texts.Title}  {texts.Today}", [.. lines.Select(l => new ListLine(l.Text))], Chosen)
    {
        Place = texts.Done ?? "",
        Above = [texts.Why, $"Next: {texts.Next}: {texts.Holds}."],
        Hints = [new("ENTER", "choose"), new($"1-{lines.Length}", "at once"), new("+ -", "up, down"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? Chosen : ListPage.Move(key, Chosen, lines.Length);
        moved = line ?? moved;
        Choice = key.IsAccept() || (line is not null && key.Digit() is not null) ? lines[Chosen].Choice : null;
        return line is null ? Notice.DeadKey : null;
    }
}
