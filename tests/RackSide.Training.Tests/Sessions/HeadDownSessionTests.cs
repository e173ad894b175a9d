using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

/// <summary>A skills day with a hold on both sides, one in shares, and the first one head down.</summary>
public sealed class HeadDownSessionTests
{
    private static readonly Ladder Wall = new("wall", "To the wall", "a wall handstand",
        [new("high-plank", 1, 10, 30) { Clean = "tall" }, new("feet-on-wall", 1, 10, 30) { Clean = "tall" }]);

    private static readonly Catalogue Catalogue = new(
    [
        .. TollboothDay.Catalogue.All.Where(e => e.Id is not ("side-plank" or "feet-on-wall")),
        Held("side-plank") with { OneSided = true },
        Held("high-plank"),
        Held("feet-on-wall") with { Inverted = true, Needs = new HoldNeeded("high-plank", 30) },
    ]);

    private static readonly TrainingDay Day = new("skills-day", "Skills day", DayKind.Skills,
    [
        Slot("sides", "side-plank", new Scheme.Hold(2, 10, 30)),
        Slot("time", "plank", new Scheme.Accumulate(60, 60)),
        Slot("wall", "feet-on-wall", new Scheme.Hold(1, 10, 30)) with { Ladder = Wall, BeginWith = "feet-on-wall", Exercises = ["high-plank", "feet-on-wall"] },
    ]);

    private static readonly SessionRecord PlankDone = Plank(30);

    private static Rack Begin(params SessionRecord[] before)
    {
        var history = new TrainingHistory(before);
        var head = TollboothDay.Begin(TollboothDay.Skills).Head with
        {
            Prescriptions = Planner.Prescriptions(Day, Catalogue, TollboothDay.Kit, TollboothDay.Ottoline, history, TollboothDay.Wednesday),
        };
        return new Rack(Session.Begin(TollboothDay.Setting(Day, history) with { Catalogue = Catalogue, Checks = [] }, head));
    }

    private static Rack AtQuestion() => Begin(PlankDone).To(i => i is HeadDownItem).RestOut();

    [Fact]
    public void Each_hold_is_done_on_the_left_and_at_once_on_the_right()
    {
        var rack = Begin().Wait(2).Press("E").Wait(15).Press("E");

        rack.InHand.Should().BeOfType<HoldItem>().Which.Side.Should().Be(Side.Right);
        rack.Phase.Should().BeOfType<Holding>("the change of sides is no rest");
        rack.Wait(2).Press("E").Wait(5 + 7.5).Press("E");
        rack.Phase.Should().BeOfType<Resting>();
        rack.Written.OfType<SetDone>().Select(d => (d.Side, d.Number, d.Done)).Should().Equal((Side.Left, 1, 10), (Side.Right, 1, 5));
    }

    [Fact]
    public void Both_sides_count_as_one_hold_as_long_as_the_shorter()
    {
        var rack = Begin().Wait(2).Press("E").Wait(15).Press("E").Wait(2).Press("E").Wait(5 + 7.5).Press("E");

        var done = new TrainingHistory([rack.Session.Record]).Of("side-plank").Single();
        done.Sets.Should().ContainSingle().Which.Should().Match<SetResult>(s => s.Set.Done == 5 && s.OtherSide == 10);
    }

    [Fact]
    public void Seconds_in_all_take_as_many_holds_as_they_take()
    {
        var rack = Begin().To(i => i is AccumulateItem).RestOut();
        rack.Press("E").Wait(5 + 42.5).Press("E");
        rack.Session.Place.Held("time").Should().Be(40);

        rack.RestOut();
        HoldInHand.Target(rack.Session).Should().Be(20);
        rack.Press("E").Wait(5 + 33).Press("E");

        rack.Session.Place.Held("time").Should().Be(60, "no more than is left is written");
        rack.Written.OfType<SetDone>().Where(d => d.Slot == "time").Should().OnlyContain(d => d.Kind == SetKind.HeldShare);
    }

    [Fact]
    public void The_first_head_down_hold_is_asked_about_before_it_and_never_again()
    {
        var rack = AtQuestion().Press("1");

        rack.Written.OfType<HeadDownAnswered>().Should().ContainSingle().Which.Floor.Should().BeFalse();
        rack.InHand.Should().BeOfType<HoldItem>().Which.Asked.Exercise.Should().Be("feet-on-wall");
        Begin(PlankDone, rack.Session.Record).Session.Head.Prescriptions.Should().NotContain(p => p.AsksFirst);
    }

    [Fact]
    public void Enter_is_the_careful_answer_and_is_asked_again_next_time()
    {
        var rack = AtQuestion().Press("E");

        rack.InHand.Should().BeOfType<HoldItem>().Which.Asked.Exercise.Should().Be("high-plank");
        rack.Written.OfType<HeadDownAnswered>().Should().BeEmpty();
    }

    [Fact]
    public void The_floor_from_now_on_is_kept_and_can_be_taken_back()
    {
        var rack = AtQuestion().Press("*");

        rack.InHand.Should().BeOfType<HoldItem>().Which.Asked.Exercise.Should().Be("high-plank");
        Begin(PlankDone, rack.Session.Record).Session.Head.Prescriptions.Should().NotContain(p => p.Exercise == "feet-on-wall");
        rack.Press(".").Press(".").InHand.Should().BeOfType<HeadDownItem>();
    }

    [Fact]
    public void Nobody_is_asked_before_thirty_seconds_of_plank() =>
        Begin(Plank(29)).Session.Place.Agenda.Should().NotContain(i => i is HeadDownItem);

    [Fact]
    public void A_head_down_hold_rings_five_seconds_before_its_target_and_at_it()
    {
        var rack = AtQuestion().Press("1").Wait(2);
        rack.Asked.Clear();

        rack.Press("E").Wait(5).Bells.Should().Equal(1);
        rack.Wait(10).Bells.Should().Equal(1, 1);
        rack.Wait(5).Bells.Should().Equal(1, 1, 2);
    }

    [Fact]
    public void One_part_is_left_out_or_ticked_without_numbers_and_the_day_goes_on()
    {
        var rack = Begin().Wait(2).Press("/54");
        rack.Session.Place.LeftOut.Should().BeEquivalentTo("sides");
        rack.InHand.Should().BeOfType<AccumulateItem>();

        rack.Press("/55");
        rack.Written.Last().Should().BeOfType<ItemTicked>().Which.Item.Should().Be("time");
        rack.InHand.Should().NotBeOfType<AccumulateItem>();
        rack.Press(".").InHand.Should().BeOfType<AccumulateItem>("a tick is taken back");
    }

    private static SessionRecord Plank(int seconds)
    {
        var head = TollboothDay.SquatOnMonday(20, 5).Head;
        var asked = head.Prescriptions[0] with { Slot = "wall", Motion = Motion.CoreBrace, Exercise = "high-plank", Scheme = new Scheme.Hold(1, 10, 30), Targets = [seconds], Load = null, Ramp = [], Search = null };
        return new(head with { Prescriptions = [asked] }, [new SetDone(new FactId("rack", 2), head.Begun, "wall", "high-plank", SetKind.Hold, 1, seconds, seconds, null)]);
    }

    private static Exercise Held(string id) => TollboothDay.Catalogue["plank"] with { Id = id, Name = id, ShortName = id };

    private static Slot Slot(string key, string exercise, Scheme scheme) => new()
    {
        Key = key,
        Motion = Motion.CoreBrace,
        Exercises = [exercise],
        Scheme = scheme,
        Rest = Duration.FromSeconds(30),
        Progress = new ProgressRule(ProgressKind.LongerHold),
    };
}
