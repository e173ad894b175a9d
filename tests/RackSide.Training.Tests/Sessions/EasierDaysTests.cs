using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Progression;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

/// <summary>Days made easier, at the rack: fewer sets than the plan's scheme, and a motion told sore.</summary>
public sealed class EasierDaysTests
{
    [Fact]
    public void The_first_day_back_from_a_lay_off_holds_the_sets_asked_for_and_not_those_of_the_scheme()
    {
        var before = ThreeWeeksAgo();

        var rack = Rack.Strength(before).To(i => i is WorkItem).RestOut();

        rack.Session.Place.Agenda.OfType<WorkItem>().Count(i => i.Slot == "squat").Should().Be(3);
        rack.Lift().RestOut().Lift().RestOut().Lift();
        rack.Session.Place.Work("squat").Should().HaveCount(3);
        ((SlotItem)rack.InHand!).Slot.Should().NotBe("squat");
    }

    [Fact]
    public void A_sore_motion_is_told_from_the_menu_and_spared_next_time()
    {
        var rack = Rack.Strength(TollboothDay.SquatOnMonday(60, 5, 5, 5, 5, 5)).To(i => i is WorkItem).RestOut();

        rack.Press("/7");

        rack.Written.Last().Should().BeOfType<SoreTold>().Which.Motion.Should().Be(Motion.Squat);
        rack.Said.Should().Be("squat told sore: lighter next time; stop if it hurts; if it stays, see a clinician");
        rack.InHand.Should().BeOfType<WorkItem>("the session goes on at the same set");
        Meanwhile.Of(new TrainingHistory([rack.Session.Record]), Motion.Squat, TollboothDay.Wednesday.PlusDays(2)).Sore.Should().NotBeNull();
    }

    [Fact]
    public void What_was_told_sore_by_a_slip_of_a_key_is_taken_back()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Press("/7");
        Undoing.Next(rack.Session).Should().Be("told sore");

        rack.Wait(1).Press(".");

        new TrainingHistory([rack.Session.Record]).Sore.Should().BeEmpty();
    }

    [Fact]
    public void In_a_light_week_another_exercise_is_light_too()
    {
        var rack = Rack.Strength(TollboothDay.SquatOnMonday(60, 5, 5, 5, 5, 5)).To(i => i is WorkItem).RestOut();
        var light = rack.Session with
        {
            Head = rack.Session.Head with
            {
                Prescriptions = [.. rack.Session.Head.Prescriptions.Select(p => p with { Why = p.Why with { Code = Reasons.LightWeek } })],
            },
        };

        Swapping.Offers(rack.Session).Select(o => o.Targets.Count).Should().Equal(5, 5);
        Swapping.Offers(light).Select(o => o.Why.Code).Should().Equal(Reasons.FirstTime, Reasons.FirstTime);
        Swapping.Offers(light with { Setting = light.Setting with { Before = FrontSquats() } })[0].Targets.Should().HaveCount(3);
    }

    private static SessionRecord ThreeWeeksAgo()
    {
        var monday = TollboothDay.SquatOnMonday(60, 5, 5, 5, 5, 5);
        return monday with { Head = monday.Head with { Date = monday.Head.Date.PlusDays(-19), Begun = monday.Head.Begun - Duration.FromDays(19) } };
    }

    private static TrainingHistory FrontSquats()
    {
        var monday = TollboothDay.SquatOnMonday(40, 5, 5, 5, 5, 5);
        return new([monday with
        {
            Head = monday.Head with { Prescriptions = [monday.Head.Prescriptions[0] with { Exercise = "front-squat" }] },
            Facts = [.. monday.Facts.Select(f => f is SetDone set ? set with { Exercise = "front-squat" } : f)],
        }]);
    }
}
