using NodaTime;

namespace RackSide.Training.Plans;

/// <summary>The training days, their weekday pattern and their rules of progress, as a coach writes them down.</summary>
/// <param name="Name">The name people read.</param>
/// <param name="Days">The training days by key.</param>
/// <param name="Week">Which training day falls on which weekday; at least one, and no two neighbouring days.</param>
public sealed record Plan(
    string Name,
    IReadOnlyList<TrainingDay> Days,
    IReadOnlyDictionary<IsoDayOfWeek, string> Week)
{
    /// <summary>The training day of that key, or null.</summary>
    public TrainingDay? Day(string key) => Days.FirstOrDefault(d => d.Key == key);

    /// <summary>The same plan on other weekdays: the days of the week are handed out in the pattern's own order.</summary>
    /// <exception cref="ArgumentException">The number of weekdays differs from the pattern's.</exception>
    public Plan On(IReadOnlyList<IsoDayOfWeek> weekdays)
    {
        var keys = Week.OrderBy(w => w.Key).Select(w => w.Value).ToList();
        return weekdays.Count == keys.Count
            ? this with { Week = weekdays.Order().Zip(keys).ToDictionary(p => p.First, p => p.Second) }
            : throw new ArgumentException($"the plan has {keys.Count} training days a week, not {weekdays.Count}", nameof(weekdays));
    }
}
