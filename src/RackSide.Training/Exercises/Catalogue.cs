namespace RackSide.Training.Exercises;

/// <summary>All exercises known, in the order they are offered.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<string, Exercise> byId;

    /// <summary>A catalogue of these exercises, and of ladders made of them.</summary>
    /// <exception cref="ArgumentException">Two exercises share an id.</exception>
    public Catalogue(IEnumerable<Exercise> exercises, IEnumerable<Ladder>? ladders = null)
    {
        All = [.. exercises];
        Ladders = [.. ladders ?? []];
        byId = All.ToDictionary(e => e.Id, StringComparer.Ordinal);
    }

    /// <summary>Every exercise, in catalogue order.</summary>
    public IReadOnlyList<Exercise> All { get; }

    /// <summary>Every ladder, in the order told.</summary>
    public IReadOnlyList<Ladder> Ladders { get; }

    /// <summary>The exercise of that id.</summary>
    /// <exception cref="KeyNotFoundException">There is none; plans are checked against the catalogue when read.</exception>
    public Exercise this[string id] => byId.TryGetValue(id, out var found)
        ? found
        : throw new KeyNotFoundException($"no exercise '{id}' in the catalogue");

    /// <summary>The exercise of that id, or null.</summary>
    public Exercise? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>All ways of doing a motion, in catalogue order.</summary>
    public IEnumerable<Exercise> Of(Motion motion) => All.Where(e => e.Motion == motion);
}
