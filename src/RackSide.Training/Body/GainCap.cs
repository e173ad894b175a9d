using RackSide.Training.Measures;

namespace RackSide.Training.Body;

/// <summary>How fast a body weight may rise while a lifter eats to grow.</summary>
public static class GainCap
{
    private const decimal Share = 0.005m;

    /// <summary>
    /// The lesser of one pound and 0.5 % of body weight, a week. One pound is the plan's own limit; 0.5 % is the upper end
    /// for novices in Iraki et al. 2019, Sports 7(7):154, and is the stricter of the two below 90.7 kg.
    /// </summary>
    /// <param name="bodyWeight">Body weight, best a week's mean.</param>
    /// <returns>The gain a week, in the unit of the body weight.</returns>
    public static Mass PerWeek(Mass bodyWeight) =>
        new(Math.Min(Mass.Lb(1).In(bodyWeight.Unit), bodyWeight.Amount * Share), bodyWeight.Unit);
}
