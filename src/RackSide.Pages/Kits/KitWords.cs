using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Kits;

/// <summary>A gym's things in few words.</summary>
internal static class KitWords
{
    private const int MostShown = 12;

    /// <summary>Masses: <c>2.5, 5, 10 lb, 7.5 kg</c>, each with its unit where both meet.</summary>
    public static string All(IReadOnlyList<Mass> masses)
    {
        var mixed = masses.Any(m => m.Unit != masses[0].Unit);
        var shown = masses.Count <= MostShown ? masses : [.. masses.Take(MostShown - 1), masses[^1]];
        var words = shown.Select((m, i) => (masses.Count > MostShown && i == shown.Count - 1 ? "... " : "") + (mixed || i == shown.Count - 1 ? m.ToString() : m.Number));
        return string.Join(", ", words);
    }

    /// <summary>From the lightest to the heaviest: <c>2.5 to 15 kg (6)</c>.</summary>
    public static string Span(IReadOnlyList<Mass> masses) => masses.Count switch
    {
        0 => "none",
        1 => masses[0].ToString(),
        _ when masses[0].Unit == masses[^1].Unit => $"{masses[0].Number} to {masses[^1]} ({masses.Count})",
        _ => $"{masses[0]} to {masses[^1]} ({masses.Count})",
    };

    /// <summary>A bar: <c>20 kg, collars 2.5 kg, for curls</c>.</summary>
    public static string Of(Bar bar) => string.Join(", ", new[]
    {
        bar.Bare.ToString(),
        bar.Collar is { } collar ? $"collars 2 x {collar}" : "",
        bar.Sleeve is { } mm ? $"sleeve {Length(mm)}" : "",
        bar.IsKept ? $"for {For(bar)}" : "",
    }.Where(w => w.Length > 0));

    /// <summary>What a bar is kept for.</summary>
    public static string For(Bar bar) => bar.IsKept ? string.Join(", ", bar.Motions.Select(m => m.Name()).Concat(bar.Exercises)) : "anything";

    /// <summary>Plates: <c>7 kinds, 9 pairs</c>.</summary>
    public static string Of(IReadOnlyList<PlatePairs> plates) => plates.Sum(p => p.Pairs) switch
    {
        0 => "none",
        1 => "1 pair",
        var pairs => $"{plates.Count(p => p.Pairs > 0)} kinds, {pairs} pairs",
    };

    /// <summary>A length.</summary>
    public static string Length(decimal millimetres) => $"{millimetres.ToString("0.##", CultureInfo.InvariantCulture)} mm";

    /// <summary>A name that nothing else has: with a number where it is taken.</summary>
    public static string Free(string name, IEnumerable<string> taken)
    {
        var used = taken.ToHashSet(StringComparer.OrdinalIgnoreCase);
        return used.Contains(name)
            ? Enumerable.Range(2, used.Count + 1).Select(n => string.Create(CultureInfo.InvariantCulture, $"{name} {n}")).First(n => !used.Contains(n))
            : name;
    }
}
