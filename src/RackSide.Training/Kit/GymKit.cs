using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>What this gym owns. Loads are only ever prescribed from here.</summary>
public sealed record GymKit
{
    /// <summary>The unit that loads are told in where none is said; single things may be marked in the other one.</summary>
    public required MassUnit Unit { get; init; }

    /// <summary>Bars, the one used by default first; never empty.</summary>
    public required IReadOnlyList<Bar> Bars { get; init; }

    /// <summary>Plates by mass, heaviest first.</summary>
    public required IReadOnlyList<PlatePairs> Plates { get; init; }

    /// <summary>Dumbbells, the mass of one, each owned as a pair, lightest first.</summary>
    public IReadOnlyList<Mass> Dumbbells { get; init; } = [];

    /// <summary>Adjustable dumbbells.</summary>
    public IReadOnlyList<Handle> Handles { get; init; } = [];

    /// <summary>Positions of the weight stack, lightest first; empty where there is none. It serves every machine that has no entry in <see cref="Machines"/>.</summary>
    public IReadOnlyList<Mass> Stack { get; init; } = [];

    /// <summary>Small plates laid on that stack, one entry for each there is.</summary>
    public IReadOnlyList<Mass> StackAddOns { get; init; } = [];

    /// <summary>Machines with stacks of their own.</summary>
    public IReadOnlyList<Machine> Machines { get; init; } = [];

    /// <summary>Bands that have a name here; a gym may own others, which only <see cref="Equipment"/> tells of.</summary>
    public IReadOnlyList<Band> Bands { get; init; } = [];

    /// <summary>The belt that plates hang from; null where there is none, and then only a dumbbell is hung.</summary>
    public Belt? Belt { get; init; } = new(null);

    /// <summary>Things without a mass, in the catalogue's words: rack, bench, pull-up bar, safety bars, mat …</summary>
    public IReadOnlySet<string> Equipment { get; init; } = new HashSet<string>();

    /// <summary>The bar used where nothing else is said.</summary>
    public Bar MainBar => BarsFor(null)[0];

    /// <summary>
    /// The bars of an exercise, the one it is usually done with first: those kept for it, or else all that are kept for
    /// none. Without an exercise they are those kept for none.
    /// </summary>
    /// <returns>Empty where every bar is kept for something else.</returns>
    public IReadOnlyList<Bar> BarsFor(Exercise? exercise)
    {
        List<Bar> own = [.. Bars.Where(b => exercise is not null && b.IsKeptFor(exercise))];
        List<Bar> common = own.Count > 0 ? own : [.. Bars.Where(b => !b.IsKept)];
        return common.Count > 0 || exercise is not null ? common : Bars;
    }

    /// <summary>The stack of an exercise on a machine: that of its own machine, or the one stack of the gym.</summary>
    public Machine? MachineFor(Exercise exercise) => Machines.FirstOrDefault(m => exercise.Equipment.Contains(m.Name))
        ?? (Stack.Count > 0 ? new("cable stack", Stack, StackAddOns) : null);
}
