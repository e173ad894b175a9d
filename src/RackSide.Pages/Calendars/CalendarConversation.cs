using NodaTime;
using RackSide.Training.Planning;

namespace RackSide.Pages.Calendars;

/// <summary>The next weeks, a day of which is looked at: + and - go by days, any digit, Enter and / leave.</summary>
/// <param name="calendar">The weeks.</param>
public sealed class CalendarConversation(TrainingCalendar calendar) : StillConversation
{
    private int chosen = calendar.Weeks.SelectMany(week => week).ToList().FindIndex(day => day.Date == calendar.Today);
    private bool left;

    /// <inheritdoc/>
    public override bool Ended => left;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => CalendarPage.Draw(size, calendar, chosen, said);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var step = key.Code is KeyCode.Up ? -7 : key.Code is KeyCode.Down ? 7
            : key.IsMore() || key.Code is KeyCode.Right ? 1 : key.IsFewer() || key.Code is KeyCode.Left ? -1 : 0;
        chosen = Math.Clamp(chosen + step, 0, (7 * calendar.Weeks.Count) - 1);
        left = step == 0 && (key.IsAccept() || KeyTable.VerbOf(key) is Verb.Menu or Verb.Back or Verb.Leave);
        return step == 0 && !left ? Notice.DeadKey : null;
    }
}
