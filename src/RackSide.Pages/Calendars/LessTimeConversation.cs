using System.Globalization;
using NodaTime;
using RackSide.Training.Planning;

namespace RackSide.Pages.Calendars;

/// <summary>There is less time than the plan takes: how many minutes are there?</summary>
/// <param name="title">The day.</param>
/// <param name="estimate">About how long the whole plan takes.</param>
public sealed class LessTimeConversation(string title, Duration estimate) : StillConversation
{
    private const int MostDigits = 3;

    private string typed = "";
    private bool ended;

    /// <summary>The minutes; null for back to the plan as it is.</summary>
    public int? Minutes { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => ended;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new EntryPage(
        title, $"The whole plan takes about {estimate.TotalMinutes:0} min at your pace. How many minutes have you?", typed, MostDigits)
    {
        Unit = "min",
        Below = "Left out first: arm work, core, then last sets. Never the first lift or its warm-up. The plan is shown before it begins.",
        Hints = [new("ENTER", "go on"), new("0-9", "type"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        switch (key)
        {
            case var _ when key.IsBack(): ended = true; return null;
            case var _ when key.IsAccept(): return Enter();
            case { Code: KeyCode.Backspace } when typed.Length > 0: typed = typed[..^1]; return null;
            case var _ when key.Digit() is { } digit && typed.Length < MostDigits: typed += digit; return null;
            default: return Notice.DeadKey;
        }
    }

    private string? Enter()
    {
        if (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            && minutes is >= TimeBudget.LeastMinutes and <= TimeBudget.MostMinutes)
        {
            (Minutes, ended) = (minutes, true);
            return null;
        }

        return $"Type minutes, {TimeBudget.LeastMinutes} to {TimeBudget.MostMinutes}; / goes back.";
    }
}
