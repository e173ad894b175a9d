using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Training.Body;

/// <summary>
/// All there is to say of a lifter's weight, food, water and sleep on a day, as one value: the screen, the commands and the
/// JSON show it and work nothing out. What is null was not told, is not known yet, or is withheld.
/// </summary>
public sealed record BodyStanding
{
    /// <summary>The day.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>What was told.</summary>
    public required BodyProfile Profile { get; init; }

    /// <summary>The unit weights are shown in.</summary>
    public required MassUnit Unit { get; init; }

    /// <summary>The last weigh-in.</summary>
    public WeighIn? Last { get; init; }

    /// <summary>The means of the last weeks that have a weigh-in, oldest first; at most twelve.</summary>
    public IReadOnlyList<(IsoWeek Week, Mass Mean)> Weeks { get; init; } = [];

    /// <summary>The trend.</summary>
    public WeightTrend? Trend { get; init; }

    /// <summary>Why no targets and verdicts are given, and whom to ask.</summary>
    public string? Refusal { get; init; }

    /// <summary>The verdict on the trend.</summary>
    public GainVerdict? Verdict { get; init; }

    /// <summary>Whether a holiday lies in the window, whose water may look like a trend.</summary>
    public bool HolidayInWindow { get; init; }

    /// <summary>The need by formula.</summary>
    public EnergyNeed? Need { get; init; }

    /// <summary>What is not told yet and the formulas want, in words.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>The need learned from food and trend.</summary>
    public LearnedNeed? Learned { get; init; }

    /// <summary>Whether the target is laid over the learned need.</summary>
    public bool UsesLearned { get; init; }

    /// <summary>What to eat.</summary>
    public EnergyTarget? Target { get; init; }

    /// <summary>Protein.</summary>
    public ProteinAdvice? Protein { get; init; }

    /// <summary>Water.</summary>
    public WaterAdvice? Water { get; init; }

    /// <summary>Sleep.</summary>
    public required SleepAdvice Sleep { get; init; }

    /// <summary>What was told of today.</summary>
    public DayTold? Day { get; init; }

    private const int WeeksShown = 12;

    /// <summary>The standing on a day.</summary>
    /// <param name="lifter">Whose.</param>
    /// <param name="weighIns">The lifter's body weights, oldest first.</param>
    /// <param name="told">What was told outside sessions and stands, in the order told.</param>
    /// <param name="today">The day.</param>
    public static BodyStanding For(Lifter lifter, IReadOnlyList<WeighIn> weighIns, IReadOnlyList<Fact> told, LocalDate today)
    {
        var (profile, past, days) = (lifter.Body, weighIns.Where(w => w.Date <= today).ToList(), DaysTold.Of(told));
        var standing = new BodyStanding
        {
            Today = today,
            Profile = profile,
            Unit = lifter.Unit,
            Last = past.LastOrDefault(),
            Weeks = WeeklyMeans(past, lifter.Unit),
            Refusal = TargetRefusal.For(profile, today),
            Trend = GainVerdict.Of(past, today)?.Trend,
            HolidayInWindow = told.OfType<AwayTold>().Any(a => a.For == AwayFor.Holiday && IsRecent(a, today)),
            Missing = [.. MissingOf(profile, past.Count > 0)],
            Sleep = SleepAdvice.Of(days, profile.Rises, today),
            Day = days.LastOrDefault(d => d.On == today),
        };
        return standing.Refusal is null ? WithNumbers(standing, days) : standing;
    }

    private static BodyStanding WithNumbers(BodyStanding s, IReadOnlyList<DayTold> days)
    {
        var mass = s.Trend is { } trend ? (decimal?)trend.Level : s.Last?.Weight.Kilograms;
        var need = s.Missing.Count == 0
            ? EnergyNeed.Of(mass!.Value, s.Profile.Height!.Value.Centimetres, s.Profile.AgeOn(s.Today)!.Value, s.Profile.Sex!.Value, s.Profile.Activity)
            : null;
        var learned = s.Trend is null ? null : LearnedNeed.Of(s.Trend, days, s.Today);
        var uses = need is not null && learned is { Error: <= LearnedNeed.MostError } && learned.Kilocalories >= (double)need.Resting;
        return s with
        {
            Verdict = s.Trend is null ? null : GainVerdict.Of(s.Trend),
            Need = need,
            Learned = learned,
            UsesLearned = uses,
            Target = need is null ? null : EnergyTarget.Over(uses ? (decimal)learned!.Kilocalories : need.Kilocalories, need.Resting),
            Protein = mass is { } m ? ProteinAdvice.Of(m) : null,
            Water = mass is { } w ? WaterAdvice.Of(w) : null,
        };
    }

    private static List<(IsoWeek, Mass)> WeeklyMeans(IReadOnlyList<WeighIn> weighIns, MassUnit unit) =>
        [.. weighIns.Select(w => IsoWeek.Of(w.Date)).Distinct().TakeLast(WeeksShown).Select(week => (week, WeekMean.Of(weighIns, week, unit)!.Value))];

    // Water of a holiday is gone two weeks after it.
    private static bool IsRecent(AwayTold away, LocalDate today) =>
        away.From <= today && (away.Until is not { } last || last >= today.PlusDays(-WeightTrend.LeastDays));

    private static IEnumerable<string> MissingOf(BodyProfile profile, bool weighed)
    {
        (bool Known, string Words)[] wanted =
        [
            (weighed, "a body weight"), (profile.Height is not null, "height"), (profile.BornBy is not null, "age"), (profile.Sex is not null, "sex for the formula"),
        ];
        return wanted.Where(w => !w.Known).Select(w => w.Words);
    }
}
