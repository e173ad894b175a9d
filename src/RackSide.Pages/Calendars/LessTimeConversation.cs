using System.Globalization;
using NodaTime;
using RackSide.Training.Planning;

namespace RackSide.Pages.Calendars;

/// <summary>There is less time than the plan takes: how many minutes are there?</summary>
/// <param name="title">The day.</param>
/// <param name="estimate">About how long the whole plan takes.</param>
public sealed class LessTimeConversation(string title, Duration estimate) : IConversation
{
    private string typed = "";
    private int? stopSigns;
    private Notice notice;

    /// <summary>The minutes; null for back to the plan as it is.</summary>
    public int? Minutes { get; private set; }

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => stopSigns is { } movedOn
        ? StopSignsPage.Draw(size, movedOn)
        : new EntryPage(title, $"The whole plan takes about {estimate.TotalMinutes:0} min at your pace. How many minutes have you?", typed, 3)
        {
            Unit = "min",
            Below = "Left out first: arm work, core, then last sets. Never the first lift or its warm-up. The plan is shown before it begins.",
            Hints = [new("ENTER", "go on"), new("0-9", "type"), new("/", "back"), new("!", "stop signs")],
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
            case { Code: KeyCode.Backspace } when typed.Length > 0: typed = typed[..^1]; break;
            case var _ when key.Digit() is { } digit && typed.Length < 3: typed += digit; break;
            default: said = Notice.DeadKey; break;
        }

        notice = Notice.Say(said, now);
        return Bell.None;
    }

    /// <summary>Nothing passes with time here but a sentence, and that goes by itself.</summary>
    public Bell Tick(Instant now) => Bell.None;

    private string? Enter()
    {
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            && minutes is >= TimeBudget.LeastMinutes and <= TimeBudget.MostMinutes)
        {
            (Minutes, Ended) = (minutes, true);
            return null;
        }

        return $"Type minutes, {TimeBudget.LeastMinutes} to {TimeBudget.MostMinutes}; / goes back.";
    }
}
