using System.Globalization;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// Extra reps before a step over ten per cent: where the next load that the kit gives lies above the handbook's ceiling
/// (ACSM 2009: 2 to 10 per cent), each set is asked for one rep more, then for two, and only then for the load. It is an
/// offer: where it was not taken in two sessions running, with all sets of the plan done, the load comes all the same. The
/// two and two are ours. It is for sets of alike reps; a range has worked its reps up before, and two-for-two asks for them
/// itself.
/// </summary>
internal static class RepsFirst
{
    /// <summary>How many extra reps come before the load.</summary>
    public const int MostExtra = 2;

    private const int MostOffers = 2;

    /// <summary>More reps instead of that load, or null where the load is due.</summary>
    public static Decision? Next(Footing f, Mass load, Mass harder, string done)
    {
        if (!Applies(f) || IsSpent(f) || !Ceiling.IsOver(load, harder, f.Exercise))
        {
            return null;
        }

        var goal = Reps.Low(f.Slot.Scheme);
        var shown = Math.Max(f.Asked, f.Fewest);
        return shown >= goal + MostExtra ? null : More(f, load, harder, done, Math.Max(shown, goal) + 1);
    }

    /// <summary>Whether extra reps were offered in two sessions running at this load and not all done.</summary>
    public static bool IsSpent(Footing f) => f.InARow(v => v == Verdict.WithinRange) >= MostOffers;

    /// <summary>What follows where the extra reps were not all done, which is no miss: the sets of the plan were.</summary>
    public static Decision Again(Footing f)
    {
        var targets = Reps.Each(f.Slot.Scheme, f.Fewest + 1);
        return new(f.Load, targets, new(
            Reasons.RepsFirst, $"at least {f.Fewest} in each set on {f.On}: {LoadText.Same(f.Load, f.Exercise)}, aim for {targets[0]}"));
    }

    private static bool Applies(Footing f) =>
        f.Slot.Scheme is Scheme.Fixed && f.Slot.Progress is { RepsFirst: true, Kind: not ProgressKind.TwoForTwo };

    private static Decision More(Footing f, Mass load, Mass harder, string done, int reps)
    {
        var rise = Ceiling.Rise(load, harder, f.Exercise)!.Value;
        var line = string.Create(
            CultureInfo.InvariantCulture, $"{done} on {f.On}: the next load is {rise:0} % more, so {reps} reps first");
        return new(load, Reps.Each(f.Slot.Scheme, reps), new(Reasons.RepsFirst, line)
        {
            Inputs = [new("nextLoad", harder.Amount, harder.Symbol), new("stepPercent", rise, "%"), new("reps", reps)],
        });
    }
}
