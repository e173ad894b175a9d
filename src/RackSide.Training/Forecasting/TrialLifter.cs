using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Forecasting;

/// <summary>
/// A newcomer who never lived, to try a plan on before anybody lifts. Every number is made up, common practice at best and no
/// source, and wide on purpose: a body of 50 to 100 kg that can squat 40 to 100 per cent of its own mass once. Each motion grows,
/// tires and has good and bad days by itself, as <see cref="InventedLifter"/> does for a forecast.
/// </summary>
internal sealed class TrialLifter
{
    /// <summary>A dumbbell's share of what a bar takes, and what the body is taken to move where the catalogue has no figure.</summary>
    private const double DumbbellShare = 0.45, UsualBodyShare = 0.5, BandShare = 0.3;

    /// <summary>Of a lift done on one leg, the share of what two do.</summary>
    private const double OneLegShare = 0.8;

    private readonly Dictionary<Motion, (InventedLifter Lift, double Fresh, LocalDate Last, double Form)> lifts = [];
    private readonly Func<double> chance;
    private readonly double strength;
    private readonly double longestHold;
    private LocalDate today;

    /// <summary>Somebody new.</summary>
    /// <param name="chance">Each call gives a number from 0 up to 1, as from a seeded source.</param>
    public TrialLifter(Func<double> chance)
    {
        this.chance = chance;
        Kilograms = Between(50, 100);
        strength = Between(0.4, 1);
        longestHold = Between(25, 90);
    }

    /// <summary>Body weight.</summary>
    public double Kilograms { get; }

    /// <summary>A new day: what is trained on it has grown since it was trained last, and has a form of its own.</summary>
    public void Wake(LocalDate date) => today = date;

    /// <summary>The good reps there are in a set; 0 or more.</summary>
    /// <param name="exercise">The exercise, not a held one.</param>
    /// <param name="load">Its load, or null.</param>
    /// <param name="set">0 for the first.</param>
    public int Reps(Exercise exercise, Mass? load, int set)
    {
        var (lift, _, _, form) = On(exercise.Motion);
        var (lifted, more) = Lifted(exercise, load);
        var able = lift with { Maximum = (lift.Maximum * Share(exercise)) + more };
        return Math.Max(0, (int)Math.Floor(able.RepsAt(Math.Max(1, lifted), set, form)));
    }

    /// <summary>The seconds that a hold can last; 1 or more.</summary>
    public int Seconds(Exercise exercise, int set)
    {
        var (lift, fresh, _, form) = On(exercise.Motion);
        return Math.Max(1, (int)(longestHold * lift.Maximum / fresh * form * (1 - (lift.Tiring * set))));
    }

    private (InventedLifter Lift, double Fresh, LocalDate Last, double Form) On(Motion motion)
    {
        if (!lifts.TryGetValue(motion, out var known))
        {
            var maximum = Kilograms * strength * OfSquat(motion) * Between(0.85, 1.15);
            var lift = InventedLifter.Newcomer(maximum, chance);
            return lifts[motion] = (lift, maximum, today, lift.FormOf(chance));
        }

        return known.Last == today ? known
            : lifts[motion] = (known.Lift.After(Period.DaysBetween(known.Last, today)), known.Fresh, today, known.Lift.FormOf(chance));
    }

    /// <summary>What is moved, and how much of the body is moved besides what a bar's load counts; kilograms.</summary>
    private (double Lifted, double More) Lifted(Exercise exercise, Mass? load)
    {
        var (body, told) = (Kilograms * ((double?)exercise.BodyShare ?? UsualBodyShare), (double)(load?.Kilograms ?? 0));
        var legs = exercise.Motion is Motion.Squat or Motion.SingleLeg or Motion.Hinge;
        return exercise.LoadType switch
        {
            LoadType.Bodyweight => (body, legs ? body * (exercise.OneSided ? OneLegShare : 1) : 0),
            LoadType.AddedWeight => (body + told, legs ? body : 0),
            LoadType.Assisted => (body - told, 0),
            LoadType.Band => (Kilograms * BandShare * OfSquat(exercise.Motion), 0),
            _ => (told, 0),
        };
    }

    private static double Share(Exercise exercise) => exercise.LoadType switch
    {
        LoadType.DumbbellPair or LoadType.DumbbellSingle => DumbbellShare,
        _ => 1,
    };

    /// <summary>What the motion takes beside a squat.</summary>
    private static double OfSquat(Motion motion) => motion switch
    {
        Motion.Squat or Motion.SingleLeg => 1,
        Motion.Hinge => 1.2,
        Motion.HorizontalPull or Motion.HorizontalPush => 0.75,
        Motion.VerticalPull => 0.8,
        Motion.VerticalPush => 0.5,
        _ => 0.35,
    };

    private double Between(double low, double high) => low + ((high - low) * chance());
}
