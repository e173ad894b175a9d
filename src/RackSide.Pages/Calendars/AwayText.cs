using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Calendars;

/// <summary>Days away in words.</summary>
public static class AwayText
{
    /// <summary>The words: <c>Sun 20 Dec to Sun 3 Jan 2027, holiday</c>.</summary>
    public static string Of(AwayTold away) => $"{Days(away)}{Reason(away.For)}";

    private static string Days(AwayTold away) =>
        away.Until is not { } last ? $"from {away.From.Shown()} on"
        : last == away.From ? last.Shown()
        : $"{(last.Year == away.From.Year ? away.From.Short() : away.From.Shown())} to {last.Shown()}";

    private static string Reason(AwayFor why) => why switch
    {
        AwayFor.Holiday => ", holiday",
        AwayFor.Illness => ", illness",
        _ => "",
    };
}
