using NodaTime;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Calendars;

/// <summary>The clock cannot be believed: what is the date? Nothing is dated before that is answered.</summary>
/// <param name="shown">The date the clock shows.</param>
/// <param name="last">The date of the newest entry; null where there is none.</param>
/// <param name="behind">Whether the clock is behind it; else far ahead.</param>
public sealed class ClockConversation(LocalDate shown, LocalDate? last, bool behind) : IConversation
{
    private string typed = "";
    private LocalDate? doubted;
    private int? stopSigns;
    private Notice notice;

    /// <summary>The date as typed; null until one is, and where the lifter left.</summary>
    public LocalDate? Today { get; private set; }

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => stopSigns is { } movedOn
        ? StopSignsPage.Draw(size, movedOn)
        : new EntryPage("WHAT IS THE DATE?", Question(), typed, DateEntry.Room)
        {
            Unit = DateTyping.Shown(typed, Near),
            Below = $"Day.month.year, such as {Near.Day}.{Near.Month}.{Near.Year}.",
            Hints = [new("ENTER", "so it is"), new("0-9 .", "type"), new("/", "leave"), new("!", "stop signs")],
            Said = notice.At(now),
        }.Draw(size);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (stopSigns is { } movedOn)
        {
            stopSigns = StopSignsPage.Press(key, movedOn);
            return Bell.None;
        }

        string? said = null;
        switch (key)
        {
            case var _ when key.IsStopSigns(): stopSigns = 0; break;
            case var _ when key.IsBack(): Ended = true; break;
            case var _ when key.IsAccept(): said = Enter(); break;
            default:
                var next = DateTyping.After(typed, key);
                (typed, doubted, said) = (next ?? typed, null, next is null ? Notice.DeadKey : null);
                break;
        }

        notice = Notice.Say(said, now);
        return Bell.None;
    }

    /// <summary>Nothing passes with time here but a sentence, and that goes by itself.</summary>
    public Bell Tick(Instant now) => Bell.None;

    // A date without a year is looked for near the newest entry, for the clock's own year may be the one that is wrong.
    private LocalDate Near => last ?? shown;

    private string Question() => last is not { } date ? $"The clock shows {shown.Shown()}, which cannot be."
        : behind ? $"The clock shows {shown.Shown()}, but the last entry in the logbook is of {date.Shown()}."
        : $"The clock shows {shown.Shown()}, more than a year after the last entry in the logbook, of {date.Shown()}.";

    private string? Enter()
    {
        if (DateEntry.Read(typed, Near) is not { } date)
        {
            return DateEntry.Refusal(typed);
        }

        if (date < last && doubted != date)
        {
            doubted = date;
            return $"That is before the last entry, of {last.Value.Short()}. ENTER again if that entry is the wrong one.";
        }

        (Today, Ended) = (date, true);
        return null;
    }
}
