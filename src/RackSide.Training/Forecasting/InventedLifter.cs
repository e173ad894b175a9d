namespace RackSide.Training.Forecasting;

/// <summary>
/// One guess of what a lifter can do in one lift, for a forecast only: what could be lifted once, how far and how fast that
/// still grows, and how sets and days differ. Growth is that of a beginner, fast and then slower, up to a ceiling. The
/// spans are common practice, no source, and wide on purpose; what was really done narrows them.
/// </summary>
/// <param name="Maximum">What could be lifted once today, in kilograms.</param>
/// <param name="Ceiling">What it grows towards while training goes on, in kilograms; no less than <paramref name="Maximum"/>.</param>
/// <param name="GrowthDays">Days in which about two thirds of the way to the ceiling are gone.</param>
/// <param name="Tiring">The share of the maximum that each set costs the next; 0 to 1.</param>
/// <param name="Scatter">How far a day's form lies from the middle at most, as a share of the maximum; 0 to 1.</param>
internal sealed record InventedLifter(double Maximum, double Ceiling, double GrowthDays, double Tiring, double Scatter)
{
    /// <summary>Without training nothing grows after so many days. Common practice, no source.</summary>
    private const double DaysThatGrow = 7;

    /// <summary>Epley 1985 read backwards: reps = 30 (maximum / load - 1).</summary>
    private const double RepsInMaximum = 30;

    /// <summary>A guess before anything was seen, around the load that the lifter was first seen with.</summary>
    /// <param name="lifted">That load, with the body where it is lifted too; kilograms, over 0.</param>
    /// <param name="chance">Chance: each call gives a number from 0 up to 1, as from a seeded source.</param>
    public static InventedLifter Any(double lifted, Func<double> chance) => Newcomer(lifted * Math.Exp(Between(0.02, 1.3, chance)), chance);

    /// <summary>Somebody new to a lift.</summary>
    /// <param name="maximum">What could be lifted once on the first day, kilograms, over 0.</param>
    /// <param name="chance">Chance: each call gives a number from 0 up to 1, as from a seeded source.</param>
    public static InventedLifter Newcomer(double maximum, Func<double> chance) => new(
        maximum, maximum * Between(1, 3, chance), Between(25, 150, chance), Between(0, 0.045, chance), Between(0, 0.07, chance));

    /// <summary>The form of a day, about 1.</summary>
    public double FormOf(Func<double> chance) => 1 + (Scatter * Between(-1, 1, chance));

    /// <summary>The good reps there are in a set, not rounded; may be below 0.</summary>
    /// <param name="lifted">Kilograms, over 0.</param>
    /// <param name="set">0 for the first set.</param>
    /// <param name="form">The day's form.</param>
    public double RepsAt(double lifted, int set, double form) =>
        (RepsInMaximum * ((Maximum * form * Math.Max(0.3, 1 - (Tiring * set)) / lifted) - 1)) + 1;

    /// <summary>So many days after the last session.</summary>
    public InventedLifter After(int days) =>
        this with { Maximum = Maximum + ((Ceiling - Maximum) * (1 - Math.Exp(-Math.Min(days, DaysThatGrow) / GrowthDays))) };

    /// <summary>Nearly the same, so that a guess that proved good is tried a little otherwise too.</summary>
    public InventedLifter Nearby(Func<double> chance)
    {
        var maximum = Maximum * Between(0.985, 1.015, chance);
        return new InventedLifter(
            maximum,
            Math.Max(maximum, Ceiling * Between(0.94, 1.06, chance)),
            GrowthDays * Between(0.95, 1.05, chance),
            Math.Clamp(Tiring * Between(0.9, 1.1, chance), 0, 0.06),
            Math.Clamp(Scatter * Between(0.9, 1.1, chance), 0, 0.08));
    }

    private static double Between(double low, double high, Func<double> chance) => low + ((high - low) * chance());
}
