using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using static RackSide.Training.History.FormulaSex;

namespace RackSide.Training.Tests.Body;

/// <summary>The need of a day, against the published formulas and their tables.</summary>
public class EnergyTests
{
    // Mifflin et al. 1990, Am J Clin Nutr 51(2):241-247 (seen), and Roza & Shizgal 1984, Am J Clin Nutr 40(1):168-182
    // (second-hand), worked out by hand from the printed formulas.
    [Theory]
    [InlineData(Male, 80, 180, 30, 1780.00, 1853.63)]
    [InlineData(Female, 65, 165, 40, 1320.25, 1386.62)]
    [InlineData(Male, 70, 175, 25, 1673.75, 1724.05)]
    [InlineData(Female, 60, 165, 25, 1345.25, 1405.33)]
    public void The_need_at_rest(FormulaSex sex, int kg, int cm, int years, double mifflin, double roza)
    {
        ((double)RestingEnergy.MifflinStJeor(kg, cm, years, sex)).Should().BeApproximately(mifflin, 0.01);
        ((double)RestingEnergy.RozaShizgal(kg, cm, years, sex)).Should().BeApproximately(roza, 0.01);
    }

    // FAO/WHO/UNU 2001, table 5.3 (second-hand): 1780 kcal at rest, light 1.40-1.69, active 1.70-1.99, vigorous 2.00-2.40.
    [Theory]
    [InlineData(DailyActivity.Light, 2759, 1.40, 1.69)]
    [InlineData(DailyActivity.Active, 3293, 1.70, 1.99)]
    [InlineData(DailyActivity.Vigorous, 3916, 2.00, 2.40)]
    public void The_need_of_a_day_is_that_at_rest_times_the_activity_level(DailyActivity activity, int kilocalories, double least, double most)
    {
        EnergyNeed.Of(80, 180, 30, Male, activity).Kilocalories.Should().Be(kilocalories);
        ((double)ActivityFactor.Of(activity)).Should().BeInRange(least, most);
    }

    // NASEM 2023, tables 5-15 and 5-16: the printed example is a woman of 22, 165 cm, 63 kg, low active: 2275 kcal
    // (second-hand); the others worked out from the coefficients, on which two copies agree.
    [Theory]
    [InlineData(Female, 63, 165, 22, 1, 2275.37)]
    [InlineData(Male, 72, 170, 35, 0, 2494.22)]
    [InlineData(Male, 72, 170, 35, 1, 2689.10)]
    [InlineData(Male, 72, 170, 35, 2, 2879.69)]
    [InlineData(Male, 72, 170, 35, 3, 3132.69)]
    [InlineData(Female, 72, 170, 35, 0, 2155.07)]
    [InlineData(Female, 72, 170, 35, 1, 2326.50)]
    [InlineData(Female, 72, 170, 35, 2, 2465.18)]
    [InlineData(Female, 72, 170, 35, 3, 2712.70)]
    [InlineData(Male, 70, 170, 30, 0, 2520.17)]
    [InlineData(Female, 70, 170, 30, 2, 2475.55)]
    public void The_requirement_of_2023(FormulaSex sex, int kg, int cm, int years, int activity, double kilocalories) =>
        ((double)EnergyRequirement.Of2023(kg, cm, years, sex, activity)).Should().BeApproximately(kilocalories, 0.011);

    // NASEM 2023, S-3 (seen): 1.00 to under 1.53, to under 1.68, to under 1.85, to under 2.50.
    [Theory]
    [InlineData(1.00, 0)]
    [InlineData(1.52, 0)]
    [InlineData(1.53, 1)]
    [InlineData(1.67, 1)]
    [InlineData(1.68, 2)]
    [InlineData(1.84, 2)]
    [InlineData(1.85, 3)]
    [InlineData(2.49, 3)]
    public void The_class_of_an_activity_level(double level, int kind) => ActivityFactor.RequirementClass((decimal)level).Should().Be(kind);

    // Institute of Medicine 2005, the printed table for 30 years of age at BMI 18.5 and 24.99, within 2 kcal (seen).
    [Theory]
    [InlineData(Male, 1.65, 18.5, 2068, 2254, 2490, 2880)]
    [InlineData(Male, 1.65, 24.99, 2349, 2566, 2842, 3296)]
    [InlineData(Female, 1.65, 18.5, 1816, 2016, 2267, 2567)]
    [InlineData(Female, 1.65, 24.99, 1982, 2202, 2477, 2807)]
    public void The_requirement_of_2005_is_its_printed_table(FormulaSex sex, double metres, double index, params int[] printed)
    {
        var kilograms = (decimal)(index * metres * metres);
        for (var activity = 0; activity < 4; activity++)
        {
            ((double)EnergyRequirement.Of2005(kilograms, (decimal)metres * 100, 30, sex, activity)).Should().BeApproximately(printed[activity], 2);
        }
    }

    // The ends of the table's rows for 1.80 m.
    [Theory]
    [InlineData(Male, 18.5, 2301, 3225)]
    [InlineData(Male, 24.99, 2635, 3720)]
    [InlineData(Female, 18.5, 2015, 2855)]
    [InlineData(Female, 24.99, 2211, 3141)]
    public void The_ends_of_the_rows_for_the_taller(FormulaSex sex, double index, int inactive, int veryActive)
    {
        var kilograms = (decimal)(index * 1.8 * 1.8);
        ((double)EnergyRequirement.Of2005(kilograms, 180, 30, sex, 0)).Should().BeApproximately(inactive, 2);
        ((double)EnergyRequirement.Of2005(kilograms, 180, 30, sex, 3)).Should().BeApproximately(veryActive, 2);
    }

    [Fact] // The trap: the footnote under circulated copies gives men the women's 1.12, 1.27 and 1.45, and the table disagrees.
    public void The_footnote_with_the_womens_factors_for_men_is_not_the_table()
    {
        var kilograms = 18.5m * 1.65m * 1.65m;
        var byFootnote = 662 - (9.53m * 30) + (1.12m * ((15.91m * kilograms) + (539.6m * 1.65m)));

        ((double)byFootnote).Should().BeGreaterThan(2254 + 10);
        ((double)EnergyRequirement.Of2005(kilograms, 165, 30, Male, 1)).Should().BeApproximately(2254, 2);
    }

    [Fact]
    public void The_spread_of_the_formulas_holds_the_default()
    {
        var need = EnergyNeed.Of(80, 180, 30, Male, DailyActivity.Light);

        need.ByFormula[0].Should().Be(("Mifflin-St Jeor", 2759m));
        need.ByFormula.Select(f => f.Formula).Should().Equal("Mifflin-St Jeor", "EER 2023", "Roza-Shizgal", "EER 2005");
        (need.Least, need.Most).Should().Be((need.ByFormula.Min(f => f.Kilocalories), need.ByFormula.Max(f => f.Kilocalories)));
        (need.Most / need.Least).Should().BeLessThan(1.15m, "four formulas of one thing are not further apart than a body from its formula");
    }

    // 250 to 500 over: common practice, within 10 to 20 per cent of 2500 (Iraki et al. 2019, seen).
    [Theory]
    [InlineData(2500, 1600, 2750, 3000, 4, 5)]
    [InlineData(2759, 1780, 3010, 3260, 5, 5)]
    [InlineData(2000, 1300, 2250, 2500, 4, 4)]
    public void The_target_is_250_to_500_over_in_meals_of_600_to_700(int need, int resting, int least, int most, int few, int many) =>
        EnergyTarget.Over(need, resting).Should().Be(new EnergyTarget(least, most, few, many));

    [Theory]
    [InlineData(1000, 1500)]
    [InlineData(1200, 1501)]
    [InlineData(-500, 1780)]
    public void No_target_is_below_the_need_at_rest(int need, int resting) =>
        EnergyTarget.Over(need, resting).Least.Should().BeGreaterThanOrEqualTo(resting);

    [Fact]
    public void Targets_are_refused_under_18_and_where_a_reason_was_told_and_it_is_said_whom_to_ask()
    {
        var today = new LocalDate(2026, 11, 26);
        var young = new BodyProfile { BornBy = today.PlusYears(-18).PlusDays(1) };

        TargetRefusal.For(young, today).Should().Contain("under 18").And.Contain("Ask a paediatrician");
        TargetRefusal.For(young, today.PlusDays(1)).Should().BeNull();
        TargetRefusal.For(new BodyProfile { NoTargets = true }, today).Should().Contain("Ask the doctor, midwife or dietitian");
        Enum.GetValues<NoTargetsFor>().Select(TargetRefusal.Of).Should().OnlyContain(said => said.Contains("sk ") && said.StartsWith("No targets"));
    }
}
