using NodaTime;

namespace RackSide.Training.Plans;

/// <summary>
/// The training days, when they fall and their rules of progress, as a coach writes them down. They fall on weekdays, or
/// they roll: then each comes so many rest days after the one before, whatever the weekday.
/// </summary>
/// <param name="Name">The name people read.</param>
/// <param name="Days">The training days by key.</param>
/// <param name="Week">Which training day falls on which weekday; no two neighbouring days. Empty where the plan rolls.</param>
public sealed record Plan(
    string Name,
    IReadOnlyList<TrainingDay> Days,
    IReadOnlyDictionary<IsoDayOfWeek, string> Week)
{
    /// <summary>
    /// The days of a plan that rolls, over and over: a training day's key, or null for a rest day; no two training days
    /// without a rest day between, the last and the first among them. Empty where the plan goes by weekdays.
    /// </summary>
    public IReadOnlyList<string?> Rolling { get; init; } = [];

    /// <summary>Whether the days roll.</summary>
    public bool Rolls => Rolling.Count > 0;

    /// <summary>Training days in seven days; rounded where the plan rolls.</summary>
    public int DaysAWeek => Rolls
        ? (int)Math.Round(7m * Rolling.Count(key => key is not null) / Rolling.Count, MidpointRounding.AwayFromZero)
        : Week.Count;

    /// <summary>The training day of that key, or null.</summary>
    public TrainingDay? Day(string key) => Days.FirstOrDefault(d => d.Key == key);

    /// <summary>
    /// The same plan on other weekdays: the days of the week are handed out in the pattern's own order, beginning with the
    /// one that leaves the fewest days between strength days.
    /// </summary>
    /// <exception cref="ArgumentException">The number of weekdays differs from the pattern's.</exception>
    public Plan On(IReadOnlyList<IsoDayOfWeek> weekdays)
    {
        var keys = Week.OrderBy(w => w.Key).Select(w => w.Value).ToList();
        if (weekdays.Count != keys.Count)
        {
            throw new ArgumentException($"the plan has {keys.Count} training days a week, not {weekdays.Count}", nameof(weekdays));
        }

        var sorted = weekdays.Order().ToList();
        return Enumerable.Range(0, Math.Max(1, keys.Count))
            .Select(first => this with { Week = sorted.Zip(keys.Skip(first).Concat(keys.Take(first))).ToDictionary(p => p.First, p => p.Second) })
            .MinBy(StrengthDaysApart)!;
    }

    /// <summary>The same training days in the same order with the same rest days between, but rolling.</summary>
    public Plan AsRolling()
    {
        if (Rolls || Week.Count == 0)
        {
            return this;
        }

        var week = Enumerable.Range(1, 7).Select(n => Week.GetValueOrDefault((IsoDayOfWeek)n)).ToList();
        var first = Math.Max(week.FindIndex(key => key is not null && Day(key)?.Kind == DayKind.Strength), week.FindIndex(key => key is not null));
        return this with { Rolling = [.. week.Skip(first), .. week.Take(first)], Week = new Dictionary<IsoDayOfWeek, string>() };
    }

    /// <summary>The most dates from one strength day of the pattern to the next; 0 where it has none.</summary>
    public int StrengthDaysApart() => StrengthDaysApart(this);

    private static int StrengthDaysApart(Plan plan)
    {
        var round = plan.Rolls ? plan.Rolling : [.. Enumerable.Range(1, 7).Select(n => plan.Week.GetValueOrDefault((IsoDayOfWeek)n))];
        var strength = Enumerable.Range(0, round.Count)
            .Where(i => round[i] is { } key && plan.Day(key)?.Kind == DayKind.Strength).ToList();
        return strength.Count == 0 ? 0
            : strength.Zip([.. strength.Skip(1), strength[0] + round.Count]).Max(pair => pair.Second - pair.First);
    }
}
