using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Demo;

/// <summary>
/// One day's effort of a simulated lifter. Reps at a load come from the one-repetition maximum by Epley's line (1985),
/// turned round; each set of a slot costs some of the next, and no two days are alike.
/// </summary>
/// <param name="body">What the lifter can do.</param>
/// <param name="days">Days since the first.</param>
/// <param name="spell">A spell in which a motion is weaker, where there is one today.</param>
/// <param name="chance">The form of the day.</param>
internal sealed class Effort(Body body, int days, Spell? spell, Random chance)
{
    private const double Epley = 30, TiredBySet = 0.02, TiredRepsBySet = 0.07, BetweenDays = 0.02;

    private readonly Dictionary<string, double> forms = [];

    /// <summary>The reps of a set that asks for so many: those, or fewer where the body has no more.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="load">Its load, or null.</param>
    /// <param name="set">1 for the first working set.</param>
    /// <param name="asked">The reps asked for.</param>
    public int Reps(Exercise exercise, Mass? load, int set, int asked) => Math.Clamp((int)Math.Floor(Able(exercise, load, set)), 0, asked);

    /// <summary>The seconds of a hold that asks for so many.</summary>
    public int Seconds(Exercise exercise, int hold, int asked) =>
        Math.Clamp((int)(body.Seconds.After(days) * Form(exercise) * Fresh(hold, TiredRepsBySet)), 1, asked);

    private double Able(Exercise exercise, Mass? load, int set) => load is { Amount: > 0 } told && exercise.LoadType != LoadType.Assisted
        ? Epley * ((body.OneRepMaximum(exercise, days) * Form(exercise) * Fresh(set, TiredBySet) / (double)told.Kilograms) - 1)
        : body.Reps.After(days) * Form(exercise) * Fresh(set, TiredRepsBySet);

    private static double Fresh(int set, double cost) => 1 - (cost * (set - 1));

    private double Form(Exercise exercise)
    {
        if (!forms.TryGetValue(exercise.Id, out var form))
        {
            form = 1 + (BetweenDays * ((2 * chance.NextDouble()) - 1));
            forms[exercise.Id] = form;
        }

        return exercise.Motion == spell?.Motion ? form * spell.Share : form;
    }
}
