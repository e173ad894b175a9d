using RackSide.Training.Measures;

namespace RackSide.Training.History;

/// <summary>
/// What the search for a first load may try. It is kept with the prescription as it was shown, so that neither a kit
/// changed in mid session nor a later version of the rule moves a search that has begun.
/// </summary>
/// <param name="Reps">Reps of each search set; 1 or more.</param>
/// <param name="Loads">The loads there are to try, easiest first, which for help is the most help first; two or more.</param>
/// <param name="First">Where it begins; one of <paramref name="Loads"/>.</param>
/// <param name="MostAtOnce">The most that one try goes beyond the last; null where it is one position of the rack or the stack.</param>
public sealed record SearchSpan(int Reps, IReadOnlyList<Mass> Loads, Mass First, Mass? MostAtOnce)
{
    /// <summary>Whether the loads are help, of which less is harder.</summary>
    public bool IsHelp => Loads[0] > Loads[^1];

    /// <summary>Whether one load is harder than another here.</summary>
    public bool IsHarder(Mass load, Mass than) => IsHelp ? load < than : load > than;
}

/// <summary>A search set as the facts tell it.</summary>
/// <param name="Load">What was lifted, which need not be what was asked for.</param>
/// <param name="Asked">Reps asked for.</param>
/// <param name="Done">Reps done.</param>
/// <param name="Left">Good reps left in reserve, as told; null where nothing is told yet.</param>
/// <param name="FormSlipped">Whether its form was told to have slipped.</param>
public sealed record SearchSet(Mass Load, int Asked, int Done, int? Left, bool FormSlipped = false)
{
    /// <summary>Whether it says by itself that the load is too much: reps short or form gone, so nothing is asked about it.</summary>
    public bool Short => Done < Asked || FormSlipped;
}
