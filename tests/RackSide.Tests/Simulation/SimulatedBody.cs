using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Simulation;

/// <summary>
/// An invented body, made from a seed: how strong it begins, how much it answers to training, how its days scatter. What
/// it can do moves by the fitness-fatigue recurrence, motion by motion. All its numbers are made up, and wide on purpose:
/// the rules must hold for bodies nobody has met.
/// </summary>
public sealed class SimulatedBody
{
    /// <summary>A day's training that the gain is reckoned for: 20 reps at full load, twice a week.</summary>
    private const double FullLoadADay = 20 * 2 / 7.0;

    private const double RepsPerMaximum = 30;

    private readonly Random chance;
    private readonly Dictionary<Motion, FitnessFatigue> states = [];
    private readonly Dictionary<Motion, double> loads = [];
    private readonly Dictionary<Motion, double> forms = [];
    private readonly double strength;
    private readonly double gain;
    private readonly double scatter;
    private readonly double tiring;
    private readonly double fitnessDays;
    private readonly double fatigueDays;

    /// <summary>The body of a seed.</summary>
    public SimulatedBody(int seed)
    {
        chance = new Random(seed);
        Kilograms = Between(45, 110);
        strength = Between(0.5, 1.3);
        gain = Between(0, 1.2);
        scatter = Between(0, 0.06);
        tiring = Between(0.005, 0.04);
        fitnessDays = Between(35, 60);
        fatigueDays = Between(7, 16);
    }

    /// <summary>Body weight.</summary>
    public double Kilograms { get; }

    /// <summary>The most this body has been able to lift once in a motion so far, on its best day, as a load on a bar.</summary>
    public IReadOnlyDictionary<Motion, double> Best => best;

    private readonly Dictionary<Motion, double> best = [];

    /// <summary>The share of what a bar takes that an exercise takes.</summary>
    public static double Share(Exercise exercise) => exercise.LoadType switch
    {
        LoadType.DumbbellPair or LoadType.DumbbellSingle => 0.45,
        _ => 1,
    };

    /// <summary>A night goes by: the day's training is taken in, and tomorrow has a form of its own.</summary>
    public void Sleep()
    {
        foreach (var motion in states.Keys)
        {
            states[motion] = states[motion].Day(loads.GetValueOrDefault(motion));
        }

        loads.Clear();
        forms.Clear();
    }

    /// <summary>The reps of a set: those asked for, or as many as there are today.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="load">The load, or null.</param>
    /// <param name="set">0 for the first set.</param>
    /// <param name="asked">The reps asked for.</param>
    public int Reps(Exercise exercise, Mass? load, int set, int asked)
    {
        var maximum = Maximum(exercise) * (1 - (tiring * set));
        var lifted = Lifted(exercise, load);
        var able = lifted > 0 ? (int)Math.Floor(RepsPerMaximum * ((maximum / lifted) - 1)) + 1 : asked;
        var done = Math.Clamp(able, 0, asked);
        Train(exercise.Motion, done * Math.Min(1, lifted / maximum));
        return done;
    }

    /// <summary>The seconds of a hold.</summary>
    public int Seconds(Exercise exercise, int set, int asked)
    {
        var held = Math.Clamp((int)(45 * State(exercise.Motion) * Form(exercise.Motion) * (1 - (tiring * set))), 1, asked);
        Train(exercise.Motion, held / 6.0);
        return held;
    }

    /// <summary>Whether something keeps this body from training today.</summary>
    public bool StaysAway(double share) => chance.NextDouble() < share;

    private double Lifted(Exercise exercise, Mass? load) => exercise.LoadType switch
    {
        LoadType.Assisted => Math.Max(0, Kilograms - (double)load!.Value.Kilograms),
        LoadType.AddedWeight => Kilograms + (double)(load?.Kilograms ?? 0),
        LoadType.Band or LoadType.Bodyweight => Kilograms * 0.5,
        _ => (double)load!.Value.Kilograms,
    };

    private double Maximum(Exercise exercise)
    {
        var today = Kilograms * strength * OfSquat(exercise.Motion) * State(exercise.Motion) * Form(exercise.Motion);
        best[exercise.Motion] = Math.Max(today, best.GetValueOrDefault(exercise.Motion));
        return today * Share(exercise);
    }

    /// <summary>What training has made of the start, as a share of it; never less than half.</summary>
    private double State(Motion motion)
    {
        var state = states.TryGetValue(motion, out var known) ? known : states[motion] = new FitnessFatigue(fitnessDays, fatigueDays);
        return Math.Max(0.5, 1 + (gain * state.Performance / state.Steady(FullLoadADay)));
    }

    private double Form(Motion motion) => forms.TryGetValue(motion, out var form)
        ? form
        : forms[motion] = 1 + (scatter * ((2 * chance.NextDouble()) - 1));

    private void Train(Motion motion, double load) => loads[motion] = loads.GetValueOrDefault(motion) + load;

    private double Between(double low, double high) => low + ((high - low) * chance.NextDouble());

    private static double OfSquat(Motion motion) => motion switch
    {
        Motion.Squat or Motion.SingleLeg => 1,
        Motion.Hinge => 1.2,
        Motion.HorizontalPull or Motion.HorizontalPush => 0.75,
        Motion.VerticalPull => 0.8,
        Motion.VerticalPush => 0.5,
        _ => 0.35,
    };
}
