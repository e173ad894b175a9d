using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Files;

public class DefaultPlanTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();
    private static readonly Plan Plan = PlanFile.Default(Catalogue);

    private static Slot Slot(string day, string key) => Plan.Day(day)!.Slots.Single(s => s.Key == key);

    private static Exercise? FirstAllowed(Slot slot, GymKit kit, bool inverted = true) => slot.Exercises
        .Select(id => Catalogue[id])
        .FirstOrDefault(e => e.Equipment.All(kit.Equipment.Contains) && (inverted || !e.Inverted));

    [Fact]
    public void It_reads_without_a_mistake() =>
        PlanFile.Read(PlanFile.DefaultText, "plan.yaml", Catalogue).Mistakes.Should().BeEmpty();

    [Fact]
    public void The_demo_shows_the_very_plan_that_comes_with_the_program() =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", "demo-plan.yaml")).Should().Be(PlanFile.DefaultText);

    [Theory]
    [InlineData(MassUnit.Kilogram)]
    [InlineData(MassUnit.Pound)]
    public void A_home_gym_can_fill_every_slot_upside_down_or_not(MassUnit unit)
    {
        foreach (var slot in Plan.Days.SelectMany(d => d.Slots))
        {
            FirstAllowed(slot, KitDefaults.For(unit)).Should().NotBeNull(slot.Key);
            FirstAllowed(slot, KitDefaults.For(unit), inverted: false).Should().NotBeNull(slot.Key);
        }
    }

    [Fact]
    public void Two_strength_days_stand_around_a_skills_day() =>
        Plan.Week.OrderBy(w => w.Key).Select(w => (w.Key, Plan.Day(w.Value)!.Kind)).Should().Equal(
            (IsoDayOfWeek.Monday, DayKind.Strength), (IsoDayOfWeek.Wednesday, DayKind.Skills), (IsoDayOfWeek.Friday, DayKind.Strength));

    [Fact]
    public void The_strength_day_begins_with_five_sets_of_five_squats_and_two_minutes_of_rest()
    {
        var squat = Plan.Day("strength-day")!.Slots[0];

        squat.Scheme.Should().Be(new Scheme.Fixed(5, 5));
        squat.Rest.Should().Be(Duration.FromMinutes(2));
        squat.Ramp.Should().Be(RampKind.Full);
        squat.Progress.Should().Be(new ProgressRule(ProgressKind.StepWhenAllMet, null, 3, 10));
    }

    [Fact]
    public void Row_presses_and_pull_follow_in_three_sets_of_six_to_twelve() =>
        Plan.Day("strength-day")!.Slots.Skip(1).Take(4).Select(s => (s.Motion, s.Scheme)).Should().Equal(
            (Motion.HorizontalPull, new Scheme.Range(3, 6, 12)),
            (Motion.HorizontalPush, new Scheme.Range(3, 6, 12)),
            (Motion.VerticalPull, new Scheme.Range(3, 6, 12)),
            (Motion.VerticalPush, new Scheme.Range(3, 6, 12)));

    [Fact]
    public void The_arms_are_a_superset_with_fifteen_seconds_to_change_over()
    {
        var arms = Plan.Day("strength-day")!.Slots.Where(s => s.Group == "arms").ToList();

        arms.Select(s => s.Motion).Should().Equal(Motion.ElbowFlexion, Motion.ElbowExtension);
        arms.Should().OnlyContain(s => s.ChangeOver == Duration.FromSeconds(15) && s.Rest == Duration.FromSeconds(75));
    }

    [Fact]
    public void The_skills_day_has_about_five_minutes_of_leg_work_by_time()
    {
        var seconds = Plan.Day("skills-day")!.Slots.Where(s => s.Motion is Motion.Squat or Motion.SingleLeg).Select(s => (Scheme.Accumulate)s.Scheme).ToList();

        (seconds.Sum(s => s.LowSeconds) / 60.0, seconds.Sum(s => s.HighSeconds) / 60.0).Should().Be((4, 5));
    }

    [Fact]
    public void The_skills_day_counts_push_ups_over_the_session_and_holds_in_seconds()
    {
        Slot("skills-day", "push-up-total").Scheme.Should().Be(new Scheme.Total(40));
        Slot("skills-day", "push-up-total").Progress.UpTo.Should().Be(100);
        Slot("skills-day", "handstand-practice").Ladder!.Goal.Should().Be("a chest-to-wall handstand");
        Slot("skills-day", "legs").Scheme.Should().Be(new Scheme.Accumulate(180, 180));
    }
}
