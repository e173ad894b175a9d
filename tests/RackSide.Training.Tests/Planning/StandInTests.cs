using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;

namespace RackSide.Training.Tests.Planning;

/// <summary>What stands in where a gym lacks something, in words.</summary>
public class StandInTests
{
    [Fact]
    public void Nothing_is_said_where_the_gym_has_what_the_plan_prefers() =>
        Texts(Tollbooth.Garage with { Equipment = Tollbooth.Garage.Equipment.Append("cable stack").ToHashSet(), Stack = [Mass.Kg(5)] }).Should().BeEmpty();

    [Fact]
    public void The_one_that_stands_in_is_named_with_what_is_missing() =>
        Texts(Without("rack", "safety bars")).Should().Contain("goblet squat for squat (no rack, no safety bars)");

    [Fact]
    public void A_slot_nothing_can_fill_says_so_too() =>
        Texts(Tollbooth.Garage with { Equipment = new HashSet<string>(), Bars = [], Dumbbells = [] })
            .Should().Contain(t => t.StartsWith("row: nothing here for row (no barbell)", StringComparison.Ordinal));

    [Fact]
    public void Bars_kept_for_something_else_are_no_bar_for_it() =>
        Texts(Tollbooth.Garage with { Bars = [Tollbooth.Garage.Bars[0] with { Motions = [Motion.ElbowFlexion] }] })
            .Should().Contain(t => t.Contains("(every bar is kept for something else)", StringComparison.Ordinal));

    [Fact]
    public void What_is_said_to_stand_in_is_what_the_day_asks_for()
    {
        var kit = Without("rack", "safety bars");
        var asked = Planner.For(Tollbooth.Beginners, Tollbooth.AllExercises, kit, Tollbooth.Ottoline, new([]), Tollbooth.Monday).Prescriptions;

        foreach (var standIn in StandIns.For(Tollbooth.StrengthDay, Tollbooth.AllExercises, kit, Tollbooth.Ottoline).Where(s => s.Instead is not null))
        {
            asked.Should().Contain(p => p.Slot == standIn.Slot && p.Exercise == standIn.Instead!.Id);
            standIn.Instead!.Motion.Should().Be(standIn.Wanted.Motion);
        }
    }

    private static GymKit Without(params string[] words) =>
        Tollbooth.Garage with { Equipment = Tollbooth.Garage.Equipment.Except(words).ToHashSet() };

    private static IEnumerable<string> Texts(GymKit kit) =>
        StandIns.For(Tollbooth.StrengthDay, Tollbooth.AllExercises, kit, Tollbooth.Ottoline).Select(s => s.Text);
}
