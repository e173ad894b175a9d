using System.Globalization;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Json;

/// <summary>A rate of weight, with its error, in the lifter's unit.</summary>
internal sealed record WeightTrendJson(decimal Level, decimal PerWeek, decimal StandardError, string Unit, int WeighIns, int Days, bool Clear);

/// <summary>What the rate comes to: <c>more</c>, <c>stay</c>, <c>less</c> or <c>none</c>.</summary>
internal sealed record GainVerdictJson(string Verdict, decimal LeastPerWeek, decimal MostPerWeek, string Unit, bool MostlyFat);

/// <summary>The need of a day by a formula.</summary>
internal sealed record FormulaJson(string Formula, int Kilocalories);

/// <summary>The need of a day.</summary>
internal sealed record EnergyNeedJson(int Resting, int Kilocalories, IReadOnlyList<FormulaJson> ByFormula);

/// <summary>The need learned from food and trend.</summary>
internal sealed record LearnedNeedJson(int Kilocalories, int StandardError, int Days, bool Used);

/// <summary>A range.</summary>
internal sealed record RangeJson(decimal Least, decimal Most);

/// <summary>Sleep.</summary>
internal sealed record SleepJson(int? MeanMinutes, int Nights, bool? UnderFloor, bool? UnderAim, string? Bedtime);

/// <summary>What <c>rackside body --json</c> and <c>rackside weigh --json</c> print.</summary>
internal sealed record BodyJson
{
    /// <summary>The version of this shape.</summary>
    public int Schema { get; } = JsonOutput.Schema;

    /// <summary>Today.</summary>
    public required string Date { get; init; }

    /// <summary>Whose.</summary>
    public required string Lifter { get; init; }

    /// <summary>Whether all of it is hidden; what follows is null then.</summary>
    public required bool Hidden { get; init; }

    /// <summary>The last weigh-in's date.</summary>
    public string? WeighedOn { get; init; }

    /// <summary>The last weigh-in.</summary>
    public MassJson? Weight { get; init; }

    /// <summary>The trend.</summary>
    public WeightTrendJson? Trend { get; init; }

    /// <summary>The verdict.</summary>
    public GainVerdictJson? Verdict { get; init; }

    /// <summary>Why there are no targets, and whom to ask.</summary>
    public string? NoTargets { get; init; }

    /// <summary>What the formulas want and was not told.</summary>
    public IReadOnlyList<string>? Missing { get; init; }

    /// <summary>The need by formula.</summary>
    public EnergyNeedJson? Need { get; init; }

    /// <summary>The need learned.</summary>
    public LearnedNeedJson? Learned { get; init; }

    /// <summary>Kilocalories a day to aim for.</summary>
    public RangeJson? TargetKilocalories { get; init; }

    /// <summary>Grams of protein a day.</summary>
    public RangeJson? ProteinGrams { get; init; }

    /// <summary>Litres drunk a day.</summary>
    public RangeJson? WaterLitres { get; init; }

    /// <summary>Sleep.</summary>
    public SleepJson? Sleep { get; init; }

    /// <summary>Last night and this morning in words.</summary>
    public string? Readiness { get; init; }

    /// <summary>Said beside it.</summary>
    public string Caution { get; } = BodyCautions.General;

    /// <summary>That standing.</summary>
    public static BodyJson Of(Lifter lifter, BodyStanding s)
    {
        var empty = new BodyJson { Date = DatedDayJson.Iso(s.Today), Lifter = lifter.Name, Hidden = lifter.Body.Hidden };
        return lifter.Body.Hidden ? empty : empty with
        {
            WeighedOn = s.Last is { } last ? DatedDayJson.Iso(last.Date) : null,
            Weight = MassJson.Of(s.Last?.Weight),
            Trend = s.Trend is { Enough: true } t
                ? new(In(s, t.Level), In(s, t.PerWeek), In(s, t.Error), s.Unit.Symbol(), t.WeighIns, t.Days, t.Clear)
                : null,
            Verdict = s.Verdict is { } v ? new(Word(v.Word), In(s, v.Aim), In(s, v.Cap), s.Unit.Symbol(), v.MostlyFat) : null,
            NoTargets = s.Refusal,
            Missing = s.Missing,
            Need = s.Need is { } n ? new(Whole(n.Resting), Whole(n.Kilocalories), [.. n.ByFormula.Select(f => new FormulaJson(f.Formula, Whole(f.Kilocalories)))]) : null,
            Learned = s.Learned is { } l ? new(Whole((decimal)l.Kilocalories), Whole((decimal)l.Error), l.Days, s.UsesLearned) : null,
            TargetKilocalories = s.Target is { } target ? new(target.Least, target.Most) : null,
            ProteinGrams = s.Protein is { } p ? new(p.LeastADay, p.MostADay) : null,
            WaterLitres = s.Water is { } w ? new(w.Least, w.Most) : null,
            Sleep = new(
                s.Sleep.Mean is { } mean ? (int)Math.Round(mean.TotalMinutes) : null,
                s.Sleep.Nights,
                s.Sleep.Mean is null ? null : s.Sleep.UnderFloor,
                s.Sleep.Mean is null ? null : s.Sleep.UnderAim,
                s.Sleep.Bedtime?.ToString("HH:mm", CultureInfo.InvariantCulture)),
            Readiness = Training.Body.Readiness.Of(s.Day),
        };
    }

    private static string Word(GainWord word) => word switch
    {
        GainWord.More => "more",
        GainWord.Less => "less",
        GainWord.Stay => "stay",
        _ => "none",
    };

    private static decimal In(BodyStanding s, double kilograms) => Math.Round(Mass.Kg((decimal)Math.Min(kilograms, 9999)).In(s.Unit), 3);

    private static int Whole(decimal number) => (int)Math.Round(number);
}
