using NodaTime;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Calendars;

/// <summary>The clock cannot be believed: what is the date? Nothing is dated before that is answered.</summary>
/// <param name="shown">The date the clock shows.</param>
/// <param name="last">The date of the newest entry; null where there is none.</param>
/// <param name="behind">Whether the clock is behind it; else far ahead.</param>
public sealed class ClockConversation(LocalDate shown, LocalDate? last, bool behind) : StillConversation
{
    private string typed = "";
    private LocalDate? doubted;
    private bool left;

    /// <summary>The date as typed; null until one is, and where the lifter left.</summary>
    public LocalDate? Today { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => left || Today is not null;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new EntryPage("WHAT IS THE DATE?", Question(), typed, DateEntry.Room)
    {
        Unit = DateTyping.Shown(typed, Near),
        Below = $"Day.month.year, such as {Near.Day}.{Near.Month}.{Near.Year}.",
        Hints = [new("ENTER", "so it is"), new("0-9 .", "type"), new("/", "leave"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        if (key.IsBack() || key.IsAccept())
        {
            return key.IsBack() ? Leave() : Enter();
        }

        var next = DateTyping.After(typed, key);
        (typed, doubted) = (next ?? typed, null);
        return next is null ? Notice.DeadKey : null;
    }

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

        Today = date;
        return null;
    }

    private string? Leave()
    {
        left = true;
        return null;
    }
}
