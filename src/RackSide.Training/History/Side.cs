namespace RackSide.Training.History;

/// <summary>The side of the body a one-sided hold was done on.</summary>
public enum Side
{
    /// <summary>The left.</summary>
    Left,

    /// <summary>The right.</summary>
    Right,
}

/// <summary>One-sided holds told side by side.</summary>
public static class Sides
{
    /// <summary>
    /// The sets with both sides of a hold taken together: as long as the shorter side, slipped where either slipped, and the
    /// other side told beside it. A hold done on one side only is not whole and is left away.
    /// </summary>
    internal static IReadOnlyList<SetResult> Whole(IReadOnlyList<SetResult> sets) => sets.All(s => s.Set.Side is null)
        ? sets
        : [.. Paired(sets).Where(s => s.Set.Side is null || s.OtherSide is not null)];

    /// <summary>The same with the holds done on one side so far.</summary>
    public static IEnumerable<SetResult> Paired(IEnumerable<SetResult> sets) =>
        sets.GroupBy(s => (s.Set.Number, s.Set.Kind, Sided: s.Set.Side is not null, Alone: s.Set.Side is null ? s.Set.Id : default)).Select(Together);

    private static SetResult Together(IEnumerable<SetResult> sides)
    {
        var both = sides.OrderBy(s => s.Set.Done).ToList();
        return both.Count == 1 ? both[0] : both[0] with { FormSlipped = both.Any(s => s.FormSlipped), OtherSide = both[^1].Set.Done };
    }
}
