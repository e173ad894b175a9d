using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Tests.Files;

/// <summary>Plans whose training days roll.</summary>
public class RollingPlanTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    private static string Text(string pattern) => PlanFile.DefaultText
        .Replace("week:\n  monday: strength-day\n  wednesday: skills-day\n  friday: strength-day\n", pattern + "\n", StringComparison.Ordinal);

    [Fact]
    public void A_plan_can_roll_in_place_of_a_week()
    {
        var plan = PlanFile.Read(Text("rolling: [strength-day, rest, skills-day, rest, strength-day, rest, rest]"), "plan.yaml", Catalogue).OrThrow();

        plan.Rolling.Should().Equal("strength-day", null, "skills-day", null, "strength-day", null, null);
        (plan.Week.Count, plan.DaysAWeek, plan.StrengthDaysApart()).Should().Be((0, 3, 4));
    }

    [Fact]
    public void The_plan_that_comes_with_the_program_rolls_as_the_same_round() =>
        PlanFile.Default(Catalogue).AsRolling().Rolling.Should().Equal("strength-day", null, "skills-day", null, "strength-day", null, null);

    [Fact]
    public void A_gym_whose_training_days_roll_says_so_in_a_word() =>
        GymFile.Read("unit: kg\ntraining_days: rolling\nbars:\n  - name: bar\n    mass: 20 kg\nplates:\n  20 kg: 1\nequipment: [rack]\n", "gym.yaml")
            .OrThrow().Rolls.Should().BeTrue();

    [Theory]
    [InlineData("rolling: [strength-day, rest, skills-day]", "rolling: the last day and the first have no rest between; write rest between training days, and after the last")]
    [InlineData("rolling: [strength-day, skills-day, rest]", "rolling: the 1st and the 2nd day have no rest between; write rest between training days, and after the last")]
    [InlineData("rolling: [rest, rest]", "rolling: no training day stands in it; list training days and rest, such as [strength-day, rest, skills-day, rest, strength-day, rest, rest]")]
    [InlineData("rolling: [strengh-day, rest]", "rolling: days has no \"strengh-day\"; did you mean strength-day?")]
    [InlineData("rolling: [strength-day, rest]\nweek:\n  monday: strength-day", "rolling: week is written too; keep one of them: a plan goes by weekdays, or it rolls")]
    public void A_round_that_will_not_do_is_told_in_one_sentence(string pattern, string sentence) =>
        PlanFile.Read(Text(pattern), "plan.yaml", Catalogue).Mistakes.Select(m => m.ToString()).Should().ContainSingle().Which.Should().EndWith(sentence);

    [Theory] // Of three weekdays with no two neighbours one gap is of three days; strength on both sides of it keeps them closest.
    [InlineData(IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday)]
    [InlineData(IsoDayOfWeek.Monday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday)]
    [InlineData(IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Sunday)]
    [InlineData(IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Sunday)]
    public void On_any_three_weekdays_strength_days_stay_at_most_three_days_apart(IsoDayOfWeek first, IsoDayOfWeek second, IsoDayOfWeek third) =>
        PlanFile.Default(Catalogue).On([first, second, third]).StrengthDaysApart().Should().BeLessThanOrEqualTo(4);
}
