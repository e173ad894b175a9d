using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Demo;

/// <summary>What an invented body can do on a day. Every number here is made up; the loads are not here, they come from the rules.</summary>
internal sealed record Body
{
    private static readonly Growth NoStrength = new(20, 30);

    /// <summary>Strength by motion: the load on a bar that can be lifted once, kg.</summary>
    public required IReadOnlyDictionary<Motion, Growth> Strength { get; init; }

    /// <summary>The most reps of an exercise without a load, fresh.</summary>
    public required Growth Reps { get; init; }

    /// <summary>The longest hold, fresh, seconds.</summary>
    public required Growth Seconds { get; init; }

    /// <summary>Body weight on the first day, in the lifter's unit.</summary>
    public required double Weight { get; init; }

    /// <summary>What body weight gains in a week, in the lifter's unit.</summary>
    public required double WeightAWeek { get; init; }

    /// <summary>How far a reading of the scale scatters, in the lifter's unit.</summary>
    public required double Scatter { get; init; }

    /// <summary>What can be lifted once in an exercise, kg; of dumbbells, the mass of one.</summary>
    public double OneRepMaximum(Exercise exercise, int days) =>
        Share(exercise.LoadType) * Strength.GetValueOrDefault(exercise.Motion, NoStrength).After(days);

    /// <summary>What the scale shows, to a tenth.</summary>
    /// <param name="days">Days since the first.</param>
    /// <param name="chance">The scatter.</param>
    /// <param name="unit">The lifter's unit.</param>
    public Mass Weighed(int days, Random chance, MassUnit unit)
    {
        // Three throws make a hill of it, so that a reading far off is rare.
        var hill = chance.NextDouble() + chance.NextDouble() + chance.NextDouble() - 1.5;
        return new Mass(Math.Round((decimal)(Weight + (WeightAWeek * days / 7) + (Scatter * hill)), 1), unit);
    }

    private static double Share(LoadType type) => type switch
    {
        LoadType.DumbbellPair or LoadType.DumbbellSingle => 0.45,
        LoadType.MachineStack => 0.9,
        _ => 1,
    };
}
