namespace RackSide.Training.History;

/// <summary>What was noted on sets.</summary>
public static class Notes
{
    /// <summary>The notes on sets of a session, in the order told.</summary>
    public static IReadOnlyList<string> NotesOn(this SessionRecord session, IEnumerable<SetResult> sets)
    {
        var ids = sets.Select(r => r.Set.Id).ToHashSet();
        return [.. session.Standing.OfType<NoteTold>().Where(n => n.Set is { } set && ids.Contains(set)).Select(n => n.Text)];
    }

    /// <summary>The notes on a session as a whole.</summary>
    public static IReadOnlyList<string> OnItself(SessionRecord session) =>
        [.. session.Standing.OfType<NoteTold>().Where(n => n.Set is null).Select(n => n.Text)];
}
