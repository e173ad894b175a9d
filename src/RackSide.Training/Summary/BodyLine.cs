using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Training.Summary;

/// <summary>Body weight by week.</summary>
/// <param name="Mean">The mean of this week's weigh-ins.</param>
/// <param name="Change">What it gained since last week's mean, below zero where it fell; null where last week has none.</param>
/// <param name="Cap">The most it should gain in a week (see <see cref="GainCap"/>).</param>
public sealed record BodyLine(Mass Mean, Mass? Change, Mass Cap)
{
    /// <summary>Whether it rose faster than the cap.</summary>
    public bool OverCap => Change > Cap;

    /// <summary>The line of a week, or null where nobody was weighed in it.</summary>
    public static BodyLine? Of(IReadOnlyList<WeighIn> weighIns, IsoWeek week, MassUnit unit)
    {
        if (WeekMean.Of(weighIns, week, unit) is not { } mean)
        {
            return null;
        }

        var before = WeekMean.Of(weighIns, week.Before, unit);
        return new BodyLine(mean, before is { } b ? mean - b : null, GainCap.PerWeek(before ?? mean));
    }
}
