using System.Globalization;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Training.Body;

/// <summary>A standing in words: a label and a sentence or two. The screen and the command show the same.</summary>
public static class StandingLines
{
    private const int FourWeeks = 28;
    private const int TwelveWeeks = 84;

    /// <summary>The lines, what decides most first.</summary>
    public static IReadOnlyList<(string Label, string Text)> Of(BodyStanding s)
    {
        (string Label, string? Text)[] all =
        [
            ("today", Readiness.Of(s.Day)),
            ("weight", Weight(s)),
            ("trend", Trend(s)),
            ("verdict", Verdict(s)),
            ("targets", s.Refusal),
            ("need", Need(s)),
            ("learned", Learned(s)),
            ("target", s.Target is { } t ? $"{t.Least} to {t.Most} kcal a day, in {Meals(t)} of about {EnergyTarget.SmallMeal} to {EnergyTarget.LargeMeal}" : null),
            ("forecast", s.Target is null ? null : Forecast(s)),
            ("protein", s.Protein is { } p ? $"{p.LeastADay} to {p.MostADay} g a day, {p.LeastAMeal} to {p.MostAMeal} a meal" : null),
            ("water", s.Water is { } w ? $"{Tenth(w.Least)} to {Tenth(w.Most)} l drunk a day, {WaterAdvice.Heat}" : null),
            ("sleep", Sleep(s.Sleep)),
            ("caution", BodyCautions.General),
        ];
        return [.. all.Where(l => l.Text is not null).Select(l => (l.Label, l.Text!))];
    }

    /// <summary>The trend in a line, without its label.</summary>
    public static string Trend(BodyStanding s) => s.Trend switch
    {
        null => "no clear trend yet: nobody was weighed in the last four weeks",
        { Enough: false } t => $"no clear trend yet: {Count(t.WeighIns, "weighing")} over {Count(t.Days, "day")}; {WeightTrend.LeastWeighIns} over {WeightTrend.LeastDays} are the least",
        { Clear: false } t => $"no clear trend yet: {Rate(s, t)}",
        var t => Rate(s, t),
    };

    /// <summary>The verdict in a sentence or two; null where there is none to give.</summary>
    public static string? Verdict(BodyStanding s)
    {
        if (s.Verdict is not { } v || s.Trend is not { Enough: true })
        {
            return null;
        }

        string?[] said = [Word(s, v), v.MostlyFat ? "At this rate most of it is fat." : null, Waters(s, v) ? BodyCautions.Water : null];
        return string.Join(' ', said.OfType<string>());
    }

    private static bool Waters(BodyStanding s, GainVerdict v) => v.Word == GainWord.Less || (s.HolidayInWindow && v.Word != GainWord.NoClearTrend);

    private static string Word(BodyStanding s, GainVerdict v)
    {
        var aim = $"{Signed(s, v.Aim)} to {Signed(s, v.Cap)} {s.Unit.Symbol()} a week is the aim";
        var change = $"{GainVerdict.LeastChange} to {GainVerdict.MostChange} kcal a day";
        return v.Word switch
        {
            GainWord.More => $"eat more, by {change}: {aim}.",
            GainWord.Less => $"eat less, by {change}: {aim}.",
            GainWord.Stay => $"stay as you are: {aim}.",
            _ => $"none yet, go on as you are: {aim}.",
        };
    }

    private static string? Weight(BodyStanding s) => s.Last is { } last
        ? $"{last.Weight} on {last.Date.Short()}{(s.Trend is { } t ? $"; level {Tenth(In(s, t.Level))} {s.Unit.Symbol()}" : "")}"
        : null;

    private static string Rate(BodyStanding s, WeightTrend t) =>
        $"{Signed(s, t.PerWeek)} {s.Unit.Symbol()} a week, give or take {Hundredth(In(s, 2 * t.Error))} ({Count(t.WeighIns, "weighing")} in {t.Days} days)";

    private static string? Need(BodyStanding s) => s.Need is { } need
        ? $"{Ten(need.Kilocalories)} kcal a day by {need.ByFormula[0].Formula}, {Ten(need.Least)} to {Ten(need.Most)} by {need.ByFormula.Count} formulas; {Ten(need.Resting)} at rest"
        : s.Refusal is null ? $"not told yet: {string.Join(", ", s.Missing)}"
        : null;

    private static string? Learned(BodyStanding s) => s.Learned is { } l
        ? $"{Ten((decimal)l.Kilocalories)} kcal a day, give or take {Ten((decimal)(2 * l.Error))}, from {l.Days} days of food{(s.UsesLearned ? "; the target is laid over it" : "; not used yet")}. {BodyCautions.Learned}"
        : null;

    private static string Forecast(BodyStanding s)
    {
        return $"{Span(FourWeeks)} {s.Unit.Symbol()} in 4 weeks, {Span(TwelveWeeks)} in 12: {BodyCautions.Forecast}";

        string Span(int days) => $"+{Tenth(In(s, WeightForecast.Change(EnergyTarget.LeastOver, days)))} to +{Tenth(In(s, WeightForecast.Change(EnergyTarget.MostOver, days)))}";
    }

    private static string? Sleep(SleepAdvice sleep)
    {
        var mean = sleep.Mean is { } m
            ? $"{Readiness.Text(m)} a night over {Count(sleep.Nights, "night")}{(sleep.UnderFloor ? ", under the floor of 6 h" : sleep.UnderAim ? ", under the aim of 7 h 30" : "")}"
            : "the aim is 7 h 30, the floor 6 h";
        return sleep.Bedtime is { } bed ? $"{mean}; in bed by {bed.ToString("HH:mm", CultureInfo.InvariantCulture)}" : mean;
    }

    private static string Meals(EnergyTarget t) => t.FewestMeals == t.MostMeals ? $"{t.FewestMeals} meals" : $"{t.FewestMeals} to {t.MostMeals} meals";

    private static string Count(int number, string what) => $"{number} {what}{(number == 1 ? "" : "s")}";

    private static decimal In(BodyStanding s, double kilograms) => Mass.Kg((decimal)Math.Min(kilograms, 9999)).In(s.Unit);

    private static string Signed(BodyStanding s, double kilograms) => In(s, kilograms).ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture);

    private static string Tenth(decimal number) => number.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Hundredth(decimal number) => number.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Ten(decimal number) => (Math.Round(number / 10) * 10).ToString("0", CultureInfo.InvariantCulture);
}
