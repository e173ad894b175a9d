using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>
/// The handbook's ceiling for one step: 2 to 10 per cent (ACSM 2009, MSSE 41(3):687-708). It is told of masses that are
/// lifted whole; help, and what hangs from a body whose weight is not in the number, have no such percentage.
/// </summary>
internal static class Ceiling
{
    /// <summary>The ceiling, per cent.</summary>
    public const decimal Percent = 10;

    /// <summary>By how many per cent a load rises, to a tenth; null where no percentage can be told.</summary>
    public static decimal? Rise(Mass from, Mass to, Exercise exercise) =>
        from.Amount <= 0 || exercise.LoadType is LoadType.AddedWeight or LoadType.Assisted
            ? null
            : Math.Round((to.In(from.Unit) - from.Amount) / from.Amount * 100, 1);

    /// <summary>Whether a step goes over the ceiling.</summary>
    public static bool IsOver(Mass from, Mass to, Exercise exercise) => Rise(from, to, exercise) is not null
        && to.In(from.Unit) > from.Amount * (1 + (Percent / 100));
}
