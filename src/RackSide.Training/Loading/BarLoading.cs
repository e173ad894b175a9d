using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>Puts a load on a bar with the plates the gym owns.</summary>
public static class BarLoading
{
    /// <summary>
    /// The bar loaded to exactly this mass with the fewest plates; among equally few, the larger plates inside. Every way
    /// is weighed up, because taking the largest plate that fits fails on a small set.
    /// </summary>
    /// <returns>The loaded bar, or null where the plates cannot make the load.</returns>
    public static BarStack? StackFor(Mass load, GymKit kit, Exercise? exercise = null) => new BarTable(kit, exercise).At(load);

    /// <summary>Says in words whether a load can be made, with what, and otherwise what there is instead.</summary>
    /// <param name="target">The load.</param>
    /// <param name="kit">The gym.</param>
    /// <param name="exercise">Whose bars are meant; null for those kept for none.</param>
    public static Loadable Explain(Mass target, GymKit kit, Exercise? exercise = null) => Explain(target, kit, new BarTable(kit, exercise));

    /// <summary>The same with the table of the bars at hand.</summary>
    internal static Loadable Explain(Mass target, GymKit kit, BarTable table)
    {
        var loads = new ReachableLoads(table.Loads);
        var (stack, below, above) = (table.At(target), loads.Below(target), loads.Above(target));
        var text = stack is not null ? LoadWords.Made(stack, kit, table.Main!)
            : table.IsTooLong(target) ? LoadWords.TooLong(target, below, above)
            : LoadWords.NotMade(target, below, above, MissingPair.For(target, kit, table));
        return new(target, stack, below, above, text);
    }
}
