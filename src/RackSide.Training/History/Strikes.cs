namespace RackSide.Training.History;

/// <summary>Takes back what was taken back.</summary>
internal static class Strikes
{
    /// <summary>The facts that no later fact struck, without the strikes, in their order.</summary>
    public static IReadOnlyList<Fact> Standing(this IReadOnlyList<Fact> facts)
    {
        var struck = facts.OfType<FactStruck>().Select(s => s.Struck).ToHashSet();
        return [.. facts.Where(f => f is not FactStruck && !struck.Contains(f.Id))];
    }
}
