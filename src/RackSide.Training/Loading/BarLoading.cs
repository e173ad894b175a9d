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
    public static BarStack? StackFor(Mass load, GymKit kit) => new BarTable(kit).At(load);

    /// <summary>Says in words whether a load can be made, with what, and otherwise what there is instead.</summary>
    public static Loadable Explain(Mass target, GymKit kit)
    {
        var table = new BarTable(kit);
        var loads = new ReachableLoads(table.Loads);
        var (stack, below, above) = (table.At(target), loads.Below(target), loads.Above(target));
        var text = stack is not null
            ? LoadWords.Made(stack, kit)
            : LoadWords.NotMade(target, below, above, MissingPair.For(target, kit, table));
        return new(target, stack, below, above, text);
    }
}
