using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>The kinds of value that only a plan has.</summary>
internal static class PlanWords
{
    public static readonly Form<DayKind> Day = WordForm.Of("a kind of day", ("strength", DayKind.Strength), ("skills", DayKind.Skills));

    public static readonly Form<RampKind> Ramp =
        WordForm.Of("a kind of ramp", ("full", RampKind.Full), ("short", RampKind.Short), ("none", RampKind.None));

    public static readonly Form<ProgressKind> Progress =
        WordForm.Of("a rule of progress", [.. ProgressWords.All.Select(w => (w.Word, w.Kind))]);

    public static readonly Form<Duration> Rest = YamlValues.Duration with
    {
        Limits = "0 s to 10 min",
        Plausible = d => d <= Duration.FromMinutes(10),
    };

    public static readonly Form<Duration> ChangeOver = YamlValues.Duration with
    {
        Limits = "0 s to 2 min",
        Plausible = d => d <= Duration.FromMinutes(2),
    };

    public static readonly Form<Training.Measures.Mass> Step = YamlValues.Mass with
    {
        Limits = "0.1 kg to 20 kg",
        Plausible = m => m.Kilograms is >= 0.1m and <= 20,
    };

    public static readonly Form<int> Sets = YamlValues.Whole(1, 10, "3");

    public static readonly Form<int> Total = YamlValues.Whole(1, 1000, "50");

    public static readonly Form<int> Misses = YamlValues.Whole(1, 10, "3");

    public static readonly Form<int> GrowBy = YamlValues.Whole(1, 100, "5");

    public static readonly Form<bool> YesOrNo = WordForm.Of("yes or no", ("yes", true), ("no", false));

    /// <summary>A share of the load: <c>10 %</c>.</summary>
    public static readonly Form<int> Percent =
        new("a percentage", "write a whole number and %, such as 10 %", text => text.EndsWith('%') ? YamlValues.ParseWhole(text[..^1].Trim()) : null)
        {
            Limits = "1 % to 50 %",
            Plausible = n => n is >= 1 and <= 50,
        };

    /// <summary>Minutes to guide a thing that is ticked, or <c>yes</c> for none.</summary>
    public static readonly Form<int> Tick =
        new("a number of minutes", "write minutes, such as 5 min, or yes for no guide time", text => text == "yes" ? 0 : WholeMinutes(text))
        {
            Limits = "1 min to 60 min",
            Plausible = n => n is >= 0 and <= 60,
        };

    private static int? WholeMinutes(string text) =>
        YamlValues.Duration.Parse(text) is { TotalMinutes: >= 1 and var minutes } && minutes == Math.Truncate(minutes) ? (int)minutes : null;
}
