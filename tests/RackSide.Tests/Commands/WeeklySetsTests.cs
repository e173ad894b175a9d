using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Summary;

namespace RackSide.Tests.Commands;

/// <summary>Weekly sets per muscle of the plan that comes with the program, with its own catalogue.</summary>
public class WeeklySetsTests
{
    private static readonly Catalogue Exercises = CatalogueFile.Read();
    private static readonly Plan Plan = PlanFile.Default(Exercises);
    private static readonly LocalDate Monday = new(2026, 11, 2);

    private static readonly GymKit Kit = KitDefaults.For(MassUnit.Kilogram) with
    {
        Stack = [Mass.Kg(5), Mass.Kg(10)],
        Equipment = KitDefaults.EquipmentWords.ToHashSet(),
    };

    // The plan's own arithmetic, two strength days: squat 5x5 twice is 10, rows and vertical pulls 3 + 3 twice 12, the
    // horizontal press 6, the overhead press 6. Worked out; that the first muscle named is the one an exercise is for is ours.
    [Theory]
    [InlineData(MuscleGroup.Quadriceps, 10)]
    [InlineData(MuscleGroup.Back, 12)]
    [InlineData(MuscleGroup.Chest, 6)]
    [InlineData(MuscleGroup.Shoulders, 6)]
    [InlineData(MuscleGroup.Biceps, 6)]
    [InlineData(MuscleGroup.Triceps, 6)]
    public void Two_strength_days_are_the_plans_own_arithmetic(MuscleGroup group, int direct) =>
        MuscleSets.Of(TwoStrengthDays(), Exercises).Single(m => m.Group == group).Direct.Should().Be(direct);

    // Half of an indirect set: Pelland 2024, preprint (seen). Rows and pulls also bend the elbow (12 sets), presses
    // straighten it (12): 6 + 6 = 12 each; the shoulders get half of the rows' and the horizontal presses' 12.
    [Theory]
    [InlineData(MuscleGroup.Biceps, 12)]
    [InlineData(MuscleGroup.Triceps, 12)]
    [InlineData(MuscleGroup.Shoulders, 12)]
    [InlineData(MuscleGroup.Glutes, 5)]
    public void An_indirect_set_counts_half(MuscleGroup group, decimal counted) =>
        MuscleSets.Of(TwoStrengthDays(), Exercises).Single(m => m.Group == group).Counted.Should().Be(counted);

    [Fact]
    public void Push_and_pull_are_even() => PushPull.Of(TwoStrengthDays(), Exercises).Should().Be(new PushPull(12, 12));

    [Fact]
    public void The_count_is_told_as_an_estimate_with_what_is_advised() =>
        MuscleLines.Of(MuscleSets.Of(TwoStrengthDays(), Exercises), PushPull.Of(TwoStrengthDays(), Exercises), 50).Should().Equal(
            "sets, estimated: quadriceps 10, back 15, chest 6,",
            "shoulders 12, biceps 12, triceps 12",
            "push 12, pull 12; for size about 10 a muscle");

    [Fact]
    public void A_set_without_a_rep_a_warm_up_and_a_hold_are_not_counted()
    {
        var day = Session(0);
        var none = day with { Facts = [.. day.Facts.Select(f => f is SetDone s ? s with { Done = 0 } : f)] };
        var warmUps = day with { Facts = [.. day.Facts.Select(f => f is SetDone s ? s with { Kind = SetKind.WarmUp } : f)] };

        MuscleSets.Of([none, warmUps], Exercises).Should().BeEmpty();
        MuscleSets.Of([day], Exercises).Should().NotContain(m => m.Group == MuscleGroup.Core && m.Direct > 0, "the plank is told in seconds");
        MuscleLines.Of([], new PushPull(0, 0), 50).Should().BeEmpty();
    }

    [Fact]
    public void A_set_short_of_its_target_or_with_slipped_form_was_done_all_the_same()
    {
        var day = Session(0);
        var shorter = day with { Facts = [.. day.Facts.Select(f => f is SetDone s ? s with { Done = 1 } : f)] };
        var slipped = day with { Facts = [.. day.Facts, new FormTold(new FactId("t", 999), day.Head.Begun, day.Facts[0].Id, true)] };

        MuscleSets.Of([shorter], Exercises).Should().Equal(MuscleSets.Of([day], Exercises));
        MuscleSets.Of([slipped], Exercises).Should().Equal(MuscleSets.Of([day], Exercises));
    }

    [Fact]
    public void Every_muscle_of_the_catalogue_is_in_a_group()
    {
        Exercises.All.SelectMany(e => e.Muscles).Distinct().Where(m => MuscleGroups.Of(m) is null).Should().BeEmpty();
        MuscleGroups.Of("something else").Should().BeNull();
    }

    private static SessionRecord[] TwoStrengthDays() => [Session(0), Session(4)];

    private static SessionRecord Session(int day)
    {
        var date = Monday.PlusDays(day);
        var at = date.AtMidnight().InUtc().ToInstant();
        var lifter = new Lifter("ottoline", "Ottoline Marsh", MassUnit.Kilogram, at);
        var asked = Planner.Prescriptions(Plan.Days[0], Exercises, Kit, lifter, TrainingHistory.Empty, date);
        var number = day * 100L;
        var head = new SessionHead
        {
            Id = new FactId("t", ++number),
            Begun = at,
            Date = date,
            Zone = "Etc/UTC",
            Lifter = lifter.Key,
            Plan = Plan.Name,
            DayKey = Plan.Days[0].Key,
            DayName = Plan.Days[0].Name,
            Kind = DayKind.Strength,
            Prescriptions = asked,
        };
        return new SessionRecord(head, [.. asked.SelectMany(p => p.Targets.Select((target, i) => (Fact)new SetDone(
            new FactId("t", ++number), at, p.Slot, p.Exercise, p.Scheme is Scheme.Hold ? SetKind.Hold : SetKind.Working, i + 1, target, target, p.Load)))]);
    }
}
