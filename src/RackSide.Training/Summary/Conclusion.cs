namespace RackSide.Training.Summary;

/// <summary>
/// What the week comes to, in at most two plain sentences: first where the loads go, then the one thing that wants
/// attention. It states and does not cheer.
/// </summary>
internal static class Conclusion
{
    public static IReadOnlyList<string> Of(IReadOnlyList<LiftLine> lifts, int daysDone, BodyLine? body)
    {
        string?[] both = [Loads(lifts, daysDone), Attention(lifts, body)];
        return [.. both.OfType<string>()];
    }

    private static string? Loads(IReadOnlyList<LiftLine> lifts, int daysDone)
    {
        var up = lifts.Where(l => l.Word == LiftLine.Up).Select(l => l.Name).ToList();
        return daysDone == 0 ? "Nothing was done this week."
            : up.Count > 0 && up.Count == lifts.Count ? "All loads go up."
            : up.Count > 3 ? $"{up.Count} of {lifts.Count} loads go up."
            : up.Count > 0 ? $"{Sentence(PlainLines.And(up))} {(up.Count == 1 ? "goes" : "go")} up."
            : lifts.Any(l => l.Word is not (LiftLine.New or LiftLine.Lighter)) ? "The loads stay as they are."
            : null;
    }

    /// <summary>Rest of 2 to 3 minutes for the large lifts: ACSM 2009; 3 over 1: Schoenfeld et al. 2016.</summary>
    private static string? Attention(IReadOnlyList<LiftLine> lifts, BodyLine? body) =>
        lifts.FirstOrDefault(l => l.Word == LiftLine.Lighter) is { } lighter
            ? $"{Sentence(lighter.Name)}: lighter next time, then up again."
        : lifts.FirstOrDefault(l => l.Misses > 1) is { } missed
            ? $"{Sentence(missed.Name)}: the same again, resting 3 min."
        : body is { OverCap: true }
            ? $"Body weight rises faster than {PlainLines.Short(body.Cap)} a week."
        : null;

    private static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
