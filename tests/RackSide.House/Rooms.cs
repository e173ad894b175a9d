using System.Text.RegularExpressions;

namespace RackSide.House;

/// <summary>The rooms of RackSide.Training: each may name only those that stand before it.</summary>
internal static partial class Rooms
{
    private const string House = "RackSide.Training";

    // Below all rooms, in the namespace that everything of RackSide stands in: words of LINQ, and nothing of the trade.
    private const string Ground = "src/RackSide.Training/Sequences.cs";

    /// <summary>From the ground up.</summary>
    public static IReadOnlyList<string> Order { get; } =
    [
        "Measures", "Exercises", "Kit", "Plans", "Schedule", "Loading", "History", "Racks", "Progression", "Strength", "Skills",
        "Body", "Safety", "Planning", "Forecasting", "Sessions", "Summary",
    ];

    /// <summary>What in these sources goes against the order, one sentence each.</summary>
    public static IReadOnlyList<string> Violations(IReadOnlyList<Source> sources)
    {
        var types = sources
            .SelectMany(s => TypeDeclared().Matches(s.Code).Select(m => (Room: RoomOf(s), Type: m.Groups["type"].Value)))
            .ToHashSet();
        return [.. sources.Where(s => s.File != Ground).SelectMany(s => Misplaced(s).Concat(Upward(s, types)))];
    }

    /// <summary>The places where a source names one of these rooms.</summary>
    public static IEnumerable<string> Named(Source source, IReadOnlyCollection<string> rooms) =>
        FullName().Matches(source.Code).Where(m => rooms.Contains(m.Groups["room"].Value)).Select(m => source.At(m.Index, m.Value));

    private static string RoomOf(Source source) =>
        NamespaceDeclared().Match(source.Code) is { Success: true } found ? found.Groups["room"].Value : "";

    private static IEnumerable<string> Misplaced(Source source)
    {
        var room = RoomOf(source);
        if (!Order.Contains(room))
        {
            yield return $"{source.File}: stands in no known room; its namespace must be {House}.<Room>";
        }
        else if (!source.File.Contains($"/{room}/", StringComparison.Ordinal))
        {
            yield return $"{source.File}: says it stands in {room}, but its folder is another";
        }

        foreach (var found in GlobalUsing().Matches(source.Code).Select(m => source.At(m.Index, m.Value)))
        {
            yield return $"{found}: a global using opens a room to every file, those before it too";
        }
    }

    private static IEnumerable<string> Upward(Source source, IReadOnlySet<(string Room, string Type)> types)
    {
        var room = RoomOf(source);
        var height = Order.ToList().IndexOf(room);
        var shortened = ShortName().Matches(source.Code)
            .Where(m => types.Contains((m.Groups["room"].Value, m.Groups["type"].Value)));
        return FullName().Matches(source.Code).Concat(shortened)
            .Where(m => Order.ToList().IndexOf(m.Groups["room"].Value) > height)
            .Select(m => $"{source.At(m.Index, m.Value)}: {room} may not name {m.Groups["room"].Value}, which stands above it");
    }

    [GeneratedRegex(@"^\s*namespace\s+RackSide\.Training\.(?<room>\w+)", RegexOptions.Multiline)]
    private static partial Regex NamespaceDeclared();

    [GeneratedRegex(@"^\s*global\s+using\s[^;]*RackSide\.Training[^;]*;", RegexOptions.Multiline)]
    private static partial Regex GlobalUsing();

    [GeneratedRegex(@"\bRackSide\.Training\.(?<room>\w+)")]
    private static partial Regex FullName();

    /// <summary>A type by the last part of its namespace, which C# allows inside RackSide.Training: <c>History.Fact</c>.</summary>
    [GeneratedRegex(@"(?<![\w.])(?:Training\.)?(?<room>[A-Z]\w*)\.(?<type>[A-Z]\w*)")]
    private static partial Regex ShortName();

    [GeneratedRegex(@"\b(?:class|struct|interface|enum|record(?:\s+struct|\s+class)?)\s+(?<type>[A-Z]\w*)")]
    private static partial Regex TypeDeclared();
}
