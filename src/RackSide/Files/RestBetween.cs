using NodaTime;

namespace RackSide.Files;

/// <summary>
/// Training days never stand next to each other, Sunday and Monday included. Source: the strength trade's handbook asks
/// beginners for non-consecutive days (NSCA, Essentials of Strength Training and Conditioning; from memory).
/// </summary>
internal static class RestBetween
{
    /// <summary>Tells each pair of neighbouring weekdays, on the line of the later one written.</summary>
    public static void Check(IReadOnlyDictionary<IsoDayOfWeek, int> lines, MistakeList mistakes)
    {
        foreach (var day in lines.Keys.Order())
        {
            var next = day == IsoDayOfWeek.Sunday ? IsoDayOfWeek.Monday : day + 1;
            if (lines.TryGetValue(next, out var line))
            {
                mistakes.Add(Math.Max(line, lines[day]), Word(next), $"follows {Word(day)} without a day of rest", "leave at least one day between training days");
            }
        }
    }

    private static string Word(IsoDayOfWeek day) => day.ToString().ToLowerInvariant();
}
