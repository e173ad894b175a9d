using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Tollbooth;

/// <summary>The Tollbooth has two pairs each of 20, 10, 5, 2.5 and 1.25 kg and a bar of 20 kg; plans worked out by hand.</summary>
public class BarInHandTests
{
    /// <summary>The ramp is 20, 32.5, 45, 60, then 67.5.</summary>
    private static Rack Squatting => Rack.Strength(TollboothDay.SquatOnMonday(65, 5, 5, 5, 5, 5));

    [Fact]
    public void The_plates_of_a_ramp_are_told_from_set_to_set()
    {
        var rack = Squatting;
        List<string> told = [];
        for (rack.To(i => i is RampItem); rack.InHand is RampItem or WorkItem { Slot: "squat", Number: < 3 }; rack.Forward())
        {
            if (rack.Phase is Lifting)
            {
                told.Add(BarInHand.Change(rack.Session, SetInHand.AskedLoad(rack.Session))!.Text);
            }
        }

        told.Should().Equal(
            "same plates, nothing to change",
            "put on 5 + 1.25 each side",
            "take off 1.25 + 5, put on 10 + 2.5, each side",
            "take off 2.5 + 10, put on 20, each side",
            "put on 2.5 + 1.25 each side",
            "same plates, nothing to change");
    }

    [Fact]
    public void Plates_that_are_on_are_kept_where_fewer_plates_would_do()
    {
        // 60 is one plate of 20; but where 10 + 10 is on, that is 60 too, and nothing is to change.
        var loads = new KitLoads(TollboothDay.Kit);
        var bar = TollboothDay.Kit.MainBar;

        Sides(loads.Row([Mass.Kg(60), Mass.Kg(80)], null)).Should().Equal("20", "20 10");
        Sides(loads.Row([Mass.Kg(60)], new BarStack(bar, [Mass.Kg(10), Mass.Kg(10)]))).Should().Equal("10 10");
        Sides(loads.Row([Mass.Kg(60)], null)).Should().Equal("20");
    }

    [Fact]
    public void A_changed_load_is_planned_from_the_plates_that_are_on()
    {
        var rack = Squatting.To(i => i is WorkItem).RestOut();

        // 20 is on; 62.5 is 20 + 1.25, 70 is 20 + 5.
        On(rack, 62.5m).Should().Be("20 1.25");
        rack.Wait(20).Press("*62.5E");

        rack.Session.OnBar!.Side.Should().Equal(Mass.Kg(20), Mass.Kg(1.25m));
        BarInHand.Change(rack.Session, Mass.Kg(70))!.Text.Should().Be("take off 1.25, put on 5, each side");
    }

    [Fact]
    public void A_load_that_the_kit_cannot_make_leaves_no_stack_to_tell()
    {
        var rack = Squatting.To(i => i is WorkItem).RestOut();

        BarInHand.For(rack.Session, Mass.Kg(63)).Should().BeNull();
        BarInHand.Change(rack.Session, Mass.Kg(63)).Should().BeNull();
    }

    [Fact]
    public void A_set_taken_back_leaves_its_plates_on()
    {
        var rack = Squatting.To(i => i is RampItem { Number: 3 });
        var on = rack.Session.OnBar!.Side;

        rack.Press(".");

        rack.InHand.Should().BeOfType<RampItem>().Which.Number.Should().Be(2);
        rack.Session.OnBar!.Side.Should().Equal(on);
        BarInHand.Change(rack.Session, SetInHand.AskedLoad(rack.Session))!.IsNone.Should().BeTrue();
    }

    [Fact]
    public void The_next_exercise_begins_with_the_plates_the_one_before_left()
    {
        var rack = Squatting.To(i => i is SlotItem { Slot: "row" });

        rack.Session.OnBar!.Side.Should().Equal(Mass.Kg(20), Mass.Kg(2.5m), Mass.Kg(1.25m));
        BarInHand.Change(rack.Session, Mass.Kg(60))!.Text.Should().Be("take off 1.25 + 2.5 each side");
    }

    [Fact]
    public void Dumbbells_in_between_leave_the_bar_as_it_is()
    {
        var rack = Squatting.To(i => i is SlotItem { Slot: "curl" });
        var on = rack.Session.OnBar;

        rack.To(i => i is SlotItem { Slot: "core" });

        rack.Session.OnBar.Should().Be(on);
        BarInHand.For(rack.Session, Mass.Kg(20)).Should().BeNull("a plank goes on no bar");
    }

    [Fact]
    public void A_resumed_session_knows_what_is_on_the_bar()
    {
        var rack = Squatting.To(i => i is WorkItem { Number: 2 });
        for (var set = 0; set < 12; set++)
        {
            var s = rack.Session;
            var resumed = Session.Resume(s.Setting, s.Record, s.NextId, rack.Now);
            (resumed.OnBar?.Side ?? []).Should().Equal(s.OnBar?.Side ?? []);
            rack.Forward();
        }
    }

    private static IEnumerable<string> Sides(IEnumerable<BarStack> row) => row.Select(Side);

    private static string Side(BarStack stack) => string.Join(' ', stack.Side.Select(p => p.Number));

    private static string On(Rack rack, decimal load) => Side(BarInHand.For(rack.Session, Mass.Kg(load))!);
}
