namespace RackSide.Pages.RestDays;

/// <summary>
/// A rest day: it says so, why, and what comes next. Enter leaves; a digit asks for one of the other things. It ends
/// with the choice made; whoever acts on it may open it again with what was done.
/// </summary>
/// <param name="texts">What the page says.</param>
public sealed class RestDayConversation(RestDayTexts texts) : StillConversation
{
    private readonly (string Text, RestDayChoice? Choice)[] first =
    [
        ("train anyway, an extra session", new RestDayChoice.TrainAnyway()),
        .. texts.Hidden ? [] : new (string, RestDayChoice?)[] { ("check-in: body weight, sleep, food", new RestDayChoice.CheckIn()) },
        ("this week's page", new RestDayChoice.WeekPage()),
        ("the next four weeks", new RestDayChoice.CalendarPage()),
        ("days away", new RestDayChoice.AwayPage()),
        (texts.Hidden ? "more: look back, kit, settings" : "more: look back, body, kit, settings", null),
        ("leave, nothing more today", new RestDayChoice.Leave()),
    ];

    // On a list of their own, so that the smallest page keeps its room for why today is a rest day.
    private readonly (string Text, RestDayChoice? Choice)[] more =
    [
        .. texts.Hidden ? [] : new (string, RestDayChoice?)[] { ("body: weight, food, sleep", new RestDayChoice.BodyPage()) },
        ("this gym's kit", new RestDayChoice.KitPage()),
        ("settings: screen, sound, keys", new RestDayChoice.Settings()),
        ("look back: each exercise", new RestDayChoice.LookBack()),
        ("back", null),
    ];

    private bool onMore;
    private int? moved;

    private (string Text, RestDayChoice? Choice)[] Lines => onMore ? more : first;

    private int Chosen => moved ?? (onMore ? 0 : first.Length - 1);

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <summary>What was asked for; null until something is.</summary>
    public RestDayChoice? Choice { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage($"{texts.Title}  {texts.Today}", [.. Lines.Select(l => new ListLine(l.Text))], Chosen)
    {
        Place = texts.Done ?? "",
        Above = [texts.Why, $"Next: {texts.Next}: {texts.Holds}."],
        Hints = [new("ENTER", "choose"), new($"1-{Lines.Length}", "at once"), new("+ -", "up, down"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? Chosen : ListPage.Move(key, Chosen, Lines.Length);
        moved = line ?? moved;
        if (key.IsAccept() || (line is not null && key.Digit() is not null))
        {
            Take(Lines[Chosen].Choice);
        }
        else if (KeyTable.VerbOf(key) == Verb.LookBack)
        {
            Choice = new RestDayChoice.LookBack();
            return null;
        }
        else if (onMore && key.IsBack())
        {
            Take(null);
            return null;
        }

        return line is null ? Notice.DeadKey : null;
    }

    /// <summary>A line without a choice of its own leads to the other list.</summary>
    private void Take(RestDayChoice? choice)
    {
        Choice = choice;
        (onMore, moved) = choice is null ? (!onMore, null) : (onMore, moved);
    }
}
