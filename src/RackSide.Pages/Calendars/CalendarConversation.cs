using NodaTime;
using RackSide.Training.Planning;

namespace RackSide.Pages.Calendars;

/// <summary>The next weeks, a day of which is looked at: + and - go by days, any digit, Enter and / leave.</summary>
/// <param name="calendar">The weeks.</param>
public sealed class CalendarConversation(TrainingCalendar calendar) : IConversation
{
    private int chosen = calendar.Weeks.SelectMany(week => week).ToList().FindIndex(day => day.Date == calendar.Today);
    private int? stopSigns;
    private Notice notice;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => stopSigns is { } movedOn
        ? StopSignsPage.Draw(size, movedOn)
        : CalendarPage.Draw(size, calendar, chosen, notice.At(now));

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (stopSigns is { } movedOn)
        {
            stopSigns = StopSignsPage.Press(key, movedOn);
            return Bell.None;
        }

        var step = key.Code is KeyCode.Up ? -7 : key.Code is KeyCode.Down ? 7
            : key.IsMore() || key.Code is KeyCode.Right ? 1 : key.IsFewer() || key.Code is KeyCode.Left ? -1 : 0;
        if (step != 0)
        {
            chosen = Math.Clamp(chosen + step, 0, (7 * calendar.Weeks.Count) - 1);
        }
        else if (key.IsStopSigns())
        {
            stopSigns = 0;
        }
        else if (key.IsAccept() || KeyTable.VerbOf(key) is Verb.Menu or Verb.Back or Verb.Leave)
        {
            Ended = true;
        }
        else
        {
            notice = Notice.Say(Notice.DeadKey, now);
        }

        return Bell.None;
    }

    /// <summary>Nothing passes with time here but a sentence, and that goes by itself.</summary>
    public Bell Tick(Instant now) => Bell.None;
}
