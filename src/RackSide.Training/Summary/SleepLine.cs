using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Training.Summary;

/// <summary>Sleep of a week: of the nights that ended in it, Sunday night's in the week before.</summary>
/// <param name="Mean">The plain mean of the nights told.</param>
/// <param name="Nights">How many were told, 1 to 7.</param>
public sealed record SleepLine(Duration Mean, int Nights)
{
    /// <summary>Whether the mean is under the floor of <see cref="SleepAdvice.Floor"/>.</summary>
    public bool UnderFloor => Mean < SleepAdvice.Floor;

    /// <summary>How long a night, and from how many: <c>7 h 10 a night over 5 nights</c>.</summary>
    public string Text => FormattableString.Invariant($"{Readiness.Text(Mean)} a night over {Nights} night{(Nights == 1 ? "" : "s")}")
        + (UnderFloor ? ", under the floor of 6 h" : "");

    /// <summary>The line of a week, or null where no night of it was told.</summary>
    /// <param name="told">What was told outside sessions and stands.</param>
    /// <param name="week">The week.</param>
    public static SleepLine? Of(IEnumerable<Fact> told, IsoWeek week)
    {
        var nights = DaysTold.Of(told).Where(d => week.Holds(d.On)).Select(d => d.Slept).OfType<Duration>().ToList();
        return nights.Count == 0 ? null : new(nights.Aggregate((a, b) => a + b) / nights.Count, nights.Count);
    }
}
