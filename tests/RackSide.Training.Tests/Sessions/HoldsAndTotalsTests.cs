using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

public sealed class HoldsAndTotalsTests
{
    private static Rack AtFirstHold() => Rack.Skills().To(i => i is HoldItem).RestOut();

    private static SetDone Last(Rack rack) => rack.Written.OfType<SetDone>().Last();

    [Fact]
    public void A_hold_counts_after_the_lead_in_and_from_the_target_on_writes_the_target()
    {
        var rack = AtFirstHold().Wait(2).Press("E");
        HoldInHand.Seconds(rack.Session, (Holding)rack.Phase).Should().BeNull("the lead-in is running");

        rack.Wait(5 + 27).Press("E");

        Last(rack).Should().BeEquivalentTo(new { Kind = SetKind.Hold, Target = 20, Done = 20 });
    }

    [Fact]
    public void A_hold_stopped_early_writes_whole_seconds_less_the_reach_to_the_key()
    {
        var rack = AtFirstHold().Wait(2).Press("E").Wait(5 + 14.6).Press("E");

        Last(rack).Done.Should().Be(12);
        rack.Said.Should().StartWith("12 of 20 s");
    }

    [Fact]
    public void Zero_is_a_false_start_and_writes_nothing()
    {
        var rack = AtFirstHold().Wait(2).Press("E").Wait(9).Press("0");

        rack.Phase.Should().BeOfType<Holding>().Which.Started.Should().BeNull();
        rack.Written.OfType<SetDone>().Where(s => s.Kind == SetKind.Hold).Should().BeEmpty();
    }

    [Fact]
    public void A_longer_hold_is_typed()
    {
        var rack = AtFirstHold().Wait(2).Press("E").Wait(40).Press("35E");

        Last(rack).Done.Should().Be(35);
    }

    [Fact]
    public void It_rings_when_the_hold_begins_and_at_the_target()
    {
        var rack = AtFirstHold().Wait(2);
        rack.Asked.Clear();

        rack.Press("E").Wait(4).Bells.Should().BeEmpty();
        rack.Wait(1).Bells.Should().Equal(1);
        rack.Wait(20).Bells.Should().Equal(1, 2);
        rack.Wait(60).Bells.Should().Equal(1, 2);
    }

    [Fact]
    public void A_total_takes_as_many_shares_as_it_takes()
    {
        var rack = Rack.Skills().To(i => i is TotalItem);
        rack.Wait(30).Press("12E").RestOut().Wait(30).Press("E").RestOut();
        rack.Session.Place.Counted("push-ups").Should().Be(24, "the share before is suggested again");

        SetInHand.Reps(rack.Session, (Lifting)rack.Phase).Should().Be(6, "no more than is left is suggested");
        rack.Wait(30).Press("E");

        rack.InHand.Should().BeOfType<HoldItem>();
    }

    [Fact]
    public void A_checklist_item_can_be_left_out_without_blame()
    {
        var rack = Rack.Skills().Check().Press("*");

        rack.Written.Last().Should().BeOfType<SlotLeftOut>().Which.Slot.Should().Be("wrists");
        rack.InHand.Should().BeOfType<TotalItem>();
    }
}
