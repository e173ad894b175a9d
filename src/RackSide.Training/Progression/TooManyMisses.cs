using RackSide.Training.History;

namespace RackSide.Training.Progression;

/// <summary>
/// After the plan's number of misses in a row at one load (three), a share of it comes off (ten per cent), rounded down to
/// what can be loaded; from there the plan's steps climb again. Common practice, no source.
/// </summary>
internal static class TooManyMisses
{
    public static Decision Next(Footing f)
    {
        var targets = Reps.Each(f.Slot.Scheme, Reps.Low(f.Slot.Scheme));
        var lighter = f.Load is { } load ? f.Moves!.Easier(load, f.Slot.Progress.LighterPercent) : f.Load;
        return new(lighter, targets, new(Reasons.ThirdMiss, Line(f, lighter))
        {
            Inputs = [new("percent", f.Slot.Progress.LighterPercent, "%")],
        });
    }

    private static string Line(Footing f, Measures.Mass? lighter)
    {
        var miss = $"{LoadText.Ordinal(f.Misses)} miss{LoadText.At(f.Used, f.Exercise)}";
        return f.Load is { } from && lighter is { } to && to != from
            ? $"{miss}: {LoadText.Easier(from, to, f.Slot.Progress.LighterPercent, f.Exercise)}"
            : $"{miss}: nothing easier, so try the easier exercise";
    }
}
