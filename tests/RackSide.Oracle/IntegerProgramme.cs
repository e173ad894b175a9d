using Google.OrTools.Sat;
using RackSide.Training.Loading;

namespace RackSide.Oracle;

/// <summary>
/// The same job as an integer programme: for each set, each place on the sleeve and each kind whether that kind lies
/// there. It shares nothing with the product's algorithm but the job.
/// </summary>
internal sealed class IntegerProgramme
{
    private const int Grams = 1000;

    private readonly CpModel model = new();
    private readonly PlateJob job;
    private readonly (long Mass, int Pairs)[] kinds;
    private readonly int room;

    private IntegerProgramme(PlateJob job)
    {
        this.job = job;
        kinds = [.. job.Plates.Where(p => p.Pairs > 0).Select(p => ((long)(p.Mass.Kilograms * Grams * 10), p.Pairs))];
        room = job.Room ?? kinds.Sum(k => k.Pairs);
    }

    /// <summary>The least cost, or null where the solver found none proven in this time.</summary>
    public static (int Handled, int On, decimal Deviation)? Solve(PlateJob job, double seconds) => new IntegerProgramme(job).Solved(seconds);

    private (int Handled, int On, decimal Deviation)? Solved(double seconds)
    {
        List<BoolVar[][]> sleeves = [.. job.Sets.Select(_ => Sleeve())];
        List<LinearExpr> deviations = [.. sleeves.Zip(job.Sets, Banded)];
        var on = LinearExpr.Sum(sleeves.Select(On));
        List<LinearExpr> changes = [Change(Fixed([.. job.Start.Select(KindOf)]), sleeves[0]), .. sleeves.Zip(sleeves.Skip(1), Change)];
        if (job.StrippedAtEnd)
        {
            changes.Add(On(sleeves[^1]));
        }

        var (handled, deviation) = (LinearExpr.Sum(changes), LinearExpr.Sum(deviations));
        long most = 10_000_000;
        model.Minimize((handled * (most * 1000)) + (on * most) + deviation);
        var solver = new CpSolver { StringParameters = $"max_time_in_seconds:{seconds:0},num_workers:2,random_seed:1" };
        return solver.Solve(model) == CpSolverStatus.Optimal
            ? ((int)solver.Value(handled), (int)solver.Value(on), solver.Value(deviation) / (decimal)(Grams * 10))
            : null;
    }

    /// <summary>Places filled from the inside without a gap, with no more of a kind than there are.</summary>
    private BoolVar[][] Sleeve()
    {
        BoolVar[][] sleeve = [.. Enumerable.Range(0, room).Select(place => kinds.Select((_, k) => model.NewBoolVar($"{place} {k}")).ToArray())];
        for (var place = 0; place < room; place++)
        {
            model.AddAtMostOne(sleeve[place]);
            if (place > 0)
            {
                model.Add(LinearExpr.Sum(sleeve[place]) <= LinearExpr.Sum(sleeve[place - 1]));
                OrderedAt(sleeve, place);
            }
        }

        for (var k = 0; k < kinds.Length; k++)
        {
            model.Add(LinearExpr.Sum(sleeve.Select(place => place[k])) <= kinds[k].Pairs);
        }

        return sleeve;
    }

    /// <summary>A plate outside may be no heavier than the one inside it; kinds run from heavy to light.</summary>
    private void OrderedAt(BoolVar[][] sleeve, int place)
    {
        for (var k = 0; job.HeaviestInside && k < kinds.Length; k++)
        {
            model.Add(LinearExpr.Sum(sleeve[place][..(k + 1)]) <= LinearExpr.Sum(sleeve[place - 1][..(k + 1)]));
        }
    }

    private IntVar Banded(BoolVar[][] sleeve, LoadBand band)
    {
        long Units(decimal kilograms) => (long)(kilograms * Grams * 10);
        var load = LinearExpr.Sum(sleeve.SelectMany(place => place.Select((x, k) => x * (2 * kinds[k].Mass)))) + Units(job.Bar.Kilograms);
        model.AddLinearConstraint(load, Units(band.Low.Kilograms), Units(band.High.Kilograms));
        var deviation = model.NewIntVar(0, 10_000_000, "deviation");
        model.AddAbsEquality(deviation, load - Units(band.Ideal.Kilograms));
        return deviation;
    }

    /// <summary>Plates off and on between two sleeves: all but those of an inner part in which both are alike.</summary>
    private LinearExpr Change(BoolVar[][] before, BoolVar[][] after)
    {
        BoolVar[] stays = [.. Enumerable.Range(0, room).Select(place => model.NewBoolVar($"stays {place}"))];
        for (var place = 0; place < room; place++)
        {
            model.Add(stays[place] <= LinearExpr.Sum(before[place]));
            if (place > 0)
            {
                model.AddImplication(stays[place], stays[place - 1]);
            }

            for (var k = 0; k < kinds.Length; k++)
            {
                model.Add(before[place][k] == after[place][k]).OnlyEnforceIf(stays[place]);
            }
        }

        return On(before) + On(after) - (2 * LinearExpr.Sum(stays));
    }

    private BoolVar[][] Fixed(int[] on) =>
        [.. Enumerable.Range(0, room).Select(place => kinds.Select((_, k) => Constant(place < on.Length && on[place] == k)).ToArray())];

    private BoolVar Constant(bool value)
    {
        var constant = model.NewBoolVar("constant");
        model.Add(constant == (value ? 1 : 0));
        return constant;
    }

    private int KindOf(Training.Measures.Mass plate) => Array.FindIndex(kinds, k => k.Mass == (long)(plate.Kilograms * Grams * 10));

    private static LinearExpr On(BoolVar[][] sleeve) => LinearExpr.Sum(sleeve.SelectMany(place => place));
}
