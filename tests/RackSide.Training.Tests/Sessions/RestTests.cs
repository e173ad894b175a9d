using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

public sealed class RestTests
{
    private static Rack Resting()
    {
        var rack = Rack.Strength(TollboothDay.SquatOnMonday(57.5m, 5, 5, 5, 5, 5)).To(i => i is WorkItem).RestOut().Lift();
        rack.Phase.Should().BeOfType<Resting>();
        return rack;
    }

    private static double Left(Rack rack) => ((Resting)rack.Phase).Clock.Left(rack.Now).TotalSeconds;

    [Fact]
    public void The_rest_begins_by_itself_and_turns_into_the_next_set_by_itself()
    {
        var rack = Resting();
        var keys = rack.Keys;

        rack.Wait(119).Phase.Should().BeOfType<Resting>();
        rack.Wait(1).Phase.Should().BeOfType<Lifting>();

        rack.InHand.Should().BeOfType<WorkItem>().Which.Number.Should().Be(2);
        rack.Keys.Should().Be(keys);
    }

    [Fact]
    public void It_rings_once_at_ten_seconds_twice_at_zero_and_once_more_half_a_minute_late_and_then_no_more()
    {
        var rack = Resting();
        rack.Asked.Clear();

        rack.Wait(109).Bells.Should().BeEmpty();
        rack.Wait(1).Bells.Should().Equal(1);
        rack.Wait(10).Bells.Should().Equal(1, 2);
        rack.Wait(30).Bells.Should().Equal(1, 2, 2);
        rack.Wait(600).Bells.Should().Equal(1, 2, 2);
    }

    // Standard S8 of docs/screen.md.
    [Fact]
    public void The_clock_is_reckoned_from_instants_so_a_stall_does_not_stretch_it()
    {
        var rack = Resting();
        var late = rack.Now + Duration.FromMinutes(30);

        rack.Send(new Ticked(late));

        (rack.Phase.Should().BeOfType<Lifting>().Which.Rested!.Ends < late).Should().BeTrue();
    }

    // Standard S8 of docs/screen.md.
    [Fact]
    public void A_clock_that_runs_backwards_does_not_lengthen_a_rest()
    {
        var rack = Resting().Wait(60);

        rack.Send(new Ticked(rack.Now - Duration.FromHours(5)));

        Left(rack).Should().BeApproximately(60, 0.01);
        rack.Session.Now.Should().Be(rack.Now);
    }

    [Fact]
    public void Plus_and_minus_change_it_by_fifteen_seconds_and_zero_holds_it()
    {
        var rack = Resting().Wait(20).Press("++");
        Left(rack).Should().BeApproximately(130, 0.01);

        rack.Press("-");
        Left(rack).Should().BeApproximately(115, 0.01);

        rack.Press("0").Wait(100);
        Left(rack).Should().BeApproximately(115, 0.01);

        rack.Press("0").Wait(15);
        Left(rack).Should().BeApproximately(100, 0.01);
    }

    [Fact]
    public void Taking_off_more_than_is_left_lifts_now()
    {
        Resting().Wait(110).Press("-").Phase.Should().BeOfType<Lifting>();
    }

    [Fact]
    public void ENTER_goes_early_and_that_is_kept()
    {
        var rack = Resting().Wait(40).Press("E");

        rack.Phase.Should().BeOfType<Lifting>();
        rack.Written.Last().Should().BeOfType<RestChanged>().Which.Left.Should().Be(Duration.Zero);
    }

    [Fact]
    public void Within_a_pair_there_is_only_the_change_over_and_the_rest_follows_the_second()
    {
        var rack = Rack.Strength().To(i => i is WorkItem { Slot: "curl" }).RestOut();

        rack.Lift();
        rack.InHand.Should().BeOfType<WorkItem>().Which.Should().BeEquivalentTo(new { Slot = "extension", Number = 1 });
        Left(rack).Should().BeApproximately(15, 0.01);

        rack.RestOut().Lift();
        rack.InHand.Should().BeOfType<WorkItem>().Which.Should().BeEquivalentTo(new { Slot = "curl", Number = 2 });
        Left(rack).Should().BeApproximately(75, 0.01);
    }

    [Fact]
    public void One_tells_that_the_form_slipped_and_one_again_that_it_held()
    {
        var rack = Resting().Wait(5).Press("1");
        rack.Session.LastSet!.FormSlipped.Should().BeTrue();
        rack.Session.LastSet.OnTarget.Should().BeFalse();

        rack.Press("1");
        rack.Session.LastSet!.OnTarget.Should().BeTrue();
    }

    [Fact]
    public void A_menu_over_a_rest_stops_no_clock()
    {
        var rack = Resting().Press("/").Wait(121);

        rack.Phase.Should().BeOfType<Choosing>().Which.Under.Should().BeOfType<Lifting>();
        rack.Press("0").Phase.Should().BeOfType<Lifting>();
    }
}
