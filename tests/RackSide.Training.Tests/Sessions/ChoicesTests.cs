using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

public sealed class ChoicesTests
{
    [Fact]
    public void Another_exercise_is_four_keys_away_and_for_today_only()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Wait(3);
        var plan = rack.Session.Head.Prescriptions;

        rack.Press("/21");

        rack.Written.Last().Should().BeOfType<ExerciseSwapped>().Which.Filled.Exercise.Should().Be("front-squat");
        ((SlotItem)rack.InHand!).Asked.Exercise.Should().Be("front-squat");
        rack.Session.Head.Prescriptions.Should().BeSameAs(plan);
    }

    [Fact]
    public void Sets_left_out_for_want_of_time_stay_left_out_after_a_swap()
    {
        var whole = TollboothDay.Begin(TollboothDay.Strength);
        var squat = whole.Head.Prescriptions[0];
        var trimmed = squat with { Targets = [.. squat.Targets.SkipLast(2)], SetsLeftOut = 2 };
        var head = whole.Head with { Prescriptions = [trimmed, .. whole.Head.Prescriptions.Skip(1)] };

        var rack = new Rack(Session.Begin(whole.Setting, head)).To(i => i is WorkItem).RestOut().Press("/21");

        ((SlotItem)rack.InHand!).Asked.Should().BeEquivalentTo(new { Exercise = "front-squat", SetsLeftOut = 2 });
        ((SlotItem)rack.InHand!).Asked.Targets.Should().HaveCount(3);
    }

    [Fact]
    public void After_a_swap_in_mid_slot_the_sets_go_on_where_they_were()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift().RestOut().Lift().RestOut();

        rack.Press("/22");

        rack.InHand.Should().BeOfType<WorkItem>().Which.Number.Should().Be(3);
        rack.Lift().Session.LastSet!.Set.Should().BeEquivalentTo(new { Exercise = "goblet-squat", Number = 3 });
    }

    // Standard S21 of docs/screen.md.
    [Theory]
    [InlineData('1', "row curl extension core")]
    [InlineData('2', "curl extension core")]
    [InlineData('3', "squat row curl extension core")]
    public void Cutting_short_leaves_out_what_is_not_done_and_one_key_takes_that_back(char line, string leftOut)
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift().RestOut();

        rack.Press("/5" + line);

        rack.Session.Place.LeftOut.Should().BeEquivalentTo(leftOut.Split(' '));
        rack.Session.Record.Sets.Should().OnlyContain(s => s.OnTarget, "left out is not missed");
        rack.Wait(1).Press(".").Session.Place.LeftOut.Should().BeEmpty();
    }

    [Fact]
    public void Stopping_now_goes_to_the_last_page_and_ENTER_closes()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Press("/53");
        rack.Phase.Should().BeOfType<Finishing>();

        rack.Wait(1).Press("E");

        rack.Session.Record.Closed.Should().BeTrue();
        rack.Asked.Last().Should().BeOfType<Leave>();
        rack.Phase.Should().BeOfType<Ended>();
    }

    [Fact]
    public void A_body_weight_typed_at_the_end_is_kept()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Press("/53").Wait(1).Press("72.4E");

        rack.Written.OfType<BodyWeighed>().Should().ContainSingle().Which.Weight.Should().Be(Mass.Kg(72.4m));
        rack.Session.Record.Closed.Should().BeTrue();
    }

    [Fact]
    public void An_impossible_body_weight_is_refused_and_nothing_closes()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Press("/53").Wait(1).Press("724E");

        rack.Said.Should().Be("Type a body weight, 20 to 350 kg.");
        rack.Session.Record.Closed.Should().BeFalse();
    }

    [Fact]
    public void A_body_weight_far_from_the_last_is_asked_back_and_kept_when_it_is_meant()
    {
        var rack = Last(s => s with { WeighIns = [new(new LocalDate(2026, 11, 20), Mass.Kg(72.4m))] }).Press("82.4E");

        rack.Phase.Should().BeOfType<Finishing>().Which.Doubt.Should().Be("82.4 kg is 10 kg more than the last, 72.4 kg on Fri 20 Nov");
        rack.Written.OfType<BodyWeighed>().Should().BeEmpty();
        rack.Wait(1).Press("E").Written.OfType<BodyWeighed>().Should().ContainSingle().Which.Weight.Should().Be(Mass.Kg(82.4m));
    }

    [Fact]
    public void After_a_doubt_it_can_be_typed_again()
    {
        var rack = Last(s => s with { WeighIns = [new(new LocalDate(2026, 11, 20), Mass.Kg(72.4m))] }).Press("82.4E").Wait(1).Press("/72.4E");

        rack.Written.OfType<BodyWeighed>().Should().ContainSingle().Which.Weight.Should().Be(Mass.Kg(72.4m));
    }

    [Fact]
    public void Where_body_weight_is_hidden_it_is_not_asked_and_not_taken()
    {
        var rack = Last(s => s with { Lifter = s.Lifter with { Body = new() { Hidden = true } } }).Press("72E");

        rack.Written.OfType<BodyWeighed>().Should().BeEmpty();
        rack.Session.Record.Closed.Should().BeTrue();
    }

    [Fact]
    public void In_the_menu_it_is_asked_back_too()
    {
        var session = TollboothDay.Begin(TollboothDay.Strength, []);
        var setting = session.Setting with { WeighIns = [new(new LocalDate(2026, 11, 20), Mass.Kg(72.4m))] };
        var rack = new Rack(session with { Setting = setting }).To(i => i is WorkItem).RestOut().Press("/682.4E");

        rack.Phase.Should().BeOfType<Choosing>().Which.Doubt.Should().Contain("10 kg more than the last");
        rack.Wait(1).Press("E").Written.OfType<BodyWeighed>().Should().ContainSingle().Which.Weight.Should().Be(Mass.Kg(82.4m));
    }

    private static Rack Last(Func<SessionSetting, SessionSetting> with)
    {
        var session = TollboothDay.Begin(TollboothDay.Strength, []);
        return new Rack(session with { Setting = with(session.Setting) }).To(i => i is WorkItem).RestOut().Press("/53").Wait(1);
    }

    [Fact]
    public void Leaving_keeps_the_session_open()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Press("/8").Wait(1).Press("E");

        rack.Asked.Last().Should().BeOfType<Leave>();
        rack.Session.Record.Closed.Should().BeFalse();
    }
}
