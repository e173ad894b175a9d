using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>Harder and easier among the loads that can be had. Help counts the other way: less of it is harder.</summary>
internal sealed class LoadMoves(Exercise exercise, ReachableLoads loads)
{
    private bool IsHelp { get; } = exercise.LoadType == LoadType.Assisted;

    /// <summary>
    /// Where a lifter begins: the lightest load. With help it is half of the most there is, because the body's share
    /// cannot be told without its weight.
    /// </summary>
    public Mass First => IsHelp ? loads.AtOrAbove(loads.Heaviest * 0.5m) : loads.Lightest;

    /// <summary>The load itself where it can be had, or the nearest easier one.</summary>
    public Mass Fit(Mass load) => IsHelp ? loads.AtOrAbove(load) : loads.AtOrBelow(load);

    /// <summary>The easiest load that is at least a step harder, or the hardest there is; null where none is harder.</summary>
    public Mass? Harder(Mass from, Mass step)
    {
        var by = new Mass(step.In(from.Unit), from.Unit);
        return IsHelp
            ? loads.Below(from) is { } less ? Lighter(less, loads.AtOrBelow(from - by)) : null
            : loads.Above(from) is { } more ? Heavier(more, loads.AtOrAbove(from + by)) : null;
    }

    /// <summary>The heaviest load above one that is no more than so many per cent heavier; null where there is none.</summary>
    public Mass? HeavierWithin(Mass from, decimal percent) =>
        !IsHelp && loads.AtOrBelow(from * (1 + (percent / 100))) is var within && within > from ? within : null;

    /// <summary>The hardest load that is easier by at least so many per cent; the easiest of all where that is still harder.</summary>
    public Mass Easier(Mass from, int percent) => IsHelp
        ? Heavier(loads.Above(from) ?? from, loads.AtOrAbove(from * (1 + (percent / 100m))))
        : loads.AtOrBelow(from * (1 - (percent / 100m)));

    private static Mass Heavier(Mass a, Mass b) => a > b ? a : b;

    private static Mass Lighter(Mass a, Mass b) => a < b ? a : b;
}
