using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Forecasting;

/// <summary>A main lift to be forecast.</summary>
/// <param name="Slot">Its slot.</param>
/// <param name="Exercise">The exercise that fills it.</param>
/// <param name="Loads">The loads the kit can give it.</param>
internal sealed record ForecastLift(Slot Slot, Exercise Exercise, ReachableLoads Loads)
{
    /// <summary>
    /// Kilograms lifted at a load: the load; with an added load the body too; with help the body less the help. Null where
    /// that takes a body weight and none is known.
    /// </summary>
    public Func<Mass, double>? Lifted(Mass? bodyWeight) => (Exercise.LoadType, (double?)bodyWeight?.Kilograms) switch
    {
        (LoadType.Assisted, { } body) => load => Math.Max(1, body - (double)load.Kilograms),
        (LoadType.AddedWeight, { } body) => load => body + (double)load.Kilograms,
        (LoadType.Assisted or LoadType.AddedWeight, null) => null,
        _ => load => Math.Max(1, (double)load.Kilograms),
    };
}
