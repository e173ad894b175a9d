using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

/// <summary>Two sessions on one bar, key by key.</summary>
public sealed class TwoOnOneBarTests
{
    [Fact]
    public void Both_confirm_before_anyone_lifts()
    {
        var pair = Pair.Strength().Wait(5).Press("+");

        pair.Who.Should().Be('B');
        pair.OfBram.Place.Current.Should().BeOfType<ConfirmItem>();
        pair.Wait(5).Press("+").Both.Both.Should().OnlyContain(s => s.Place.Current is RampItem);
    }

    [Fact]
    public void Working_sets_are_done_in_turn_each_in_the_own_session()
    {
        var pair = Working();
        var (first, done) = (pair.Who, pair.Both.Both.Select(s => s.Place.Work("squat").Count()).ToList());

        pair.Lift().Who.Should().NotBe(first);
        pair.RestOut().Lift().Who.Should().Be(first);
        pair.Both.Both.Select(s => s.Place.Work("squat").Count()).Should().Equal(done.Select(d => d + 1));
        pair.Asked.Where(x => x.Effect is WriteFact { Fact: SetDone }).TakeLast(2).Select(x => x.Lifter).Should().BeEquivalentTo([0, 1]);
    }

    [Fact]
    public void The_one_in_turn_rests_as_long_as_the_plan_says_while_the_other_stands_by()
    {
        var pair = Working().Lift().RestOut().Lift();

        pair.Both.InTurn.Phase.Should().BeOfType<Resting>().Which.Clock.Left(pair.Now).Should().BeLessThan(Duration.FromSeconds(120)).And.BeGreaterThan(Duration.FromSeconds(60));
        pair.Both.Other.Phase.Should().BeOfType<Resting>();
    }

    [Fact]
    public void The_plates_are_changed_from_the_others_stack()
    {
        var pair = Working();
        var load = SetInHand.AskedLoad(pair.Both.InTurn)!.Value;
        var left = BarInHand.For(pair.Both.InTurn, load)!;
        pair.Lift();

        var asked = SetInHand.AskedLoad(pair.Both.InTurn)!.Value;
        asked.Should().NotBe(load);
        var needed = BarInHand.For(pair.Both.InTurn, asked)!;
        BarInHand.Change(pair.Both.InTurn, asked)!.Text.Should().Be(PlateChange.Between(left, needed).Text).And.NotBe("same plates, nothing to change");
        needed.Total.Should().Be(asked);
    }

    [Fact]
    public void Undo_takes_back_the_newest_set_whoever_did_it_and_gives_that_lifter_the_turn()
    {
        var pair = Working();
        var (who, count) = (pair.Who, pair.Sets.Count);
        pair.Lift().Wait(5).Press(".");

        pair.Who.Should().Be(who);
        pair.Sets.Should().HaveCount(count);
        pair.Both.InTurn.Phase.Should().BeOfType<Lifting>();
        pair.Both.Other.Facts.Should().NotContain(f => f is FactStruck);
    }

    [Fact]
    public void A_number_half_typed_is_cleared_first()
    {
        var pair = Working().Lift().RestOut();
        var count = pair.Sets.Count;

        pair.Press("3.").Sets.Should().HaveCount(count);
        ((Lifting)pair.Both.InTurn.Phase).Typed.Should().BeEmpty();
    }

    [Fact]
    public void A_bounced_enter_never_writes_the_others_set()
    {
        var pair = Working();
        var count = pair.Sets.Count;

        pair.Lift().Wait(0.1).Press("E").Sets.Should().HaveCount(count + 1);
    }

    [Fact]
    public void An_enter_too_soon_after_the_turn_passed_is_doubted()
    {
        var pair = Pair.Strength().Check();
        pair.Lift().Wait(2).Press("E");

        pair.Sets.Should().HaveCount(1);
        ((Lifting)pair.Both.InTurn.Phase).Doubt.Should().Be("that was quick");
    }

    [Fact]
    public void One_may_go_now_although_the_other_is_in_turn()
    {
        var pair = Working().Lift().RestOut().Lift().Wait(3);
        var waiting = pair.Who;
        pair.Both.InTurn.Phase.Should().BeOfType<Resting>();

        pair.Press("2").Who.Should().NotBe(waiting);
        pair.Both.Why.Should().EndWith("goes now, as asked for");
        pair.Press("/*1").Who.Should().Be(waiting, "the list gives the turn back");
    }

    [Fact]
    public void The_word_on_form_is_told_of_the_newest_set()
    {
        var pair = Working().Lift().RestOut().Lift();
        var newest = pair.Sets[^1];

        pair.Press("1").Both.Both[newest.Lifter].LastSet!.FormSlipped.Should().BeTrue();
        pair.Both.Other.LastSet!.Set.Should().Be(newest.Set, "the turn has passed on");
        pair.Press("/*2").Both.Both[newest.Lifter].LastSet!.FormSlipped.Should().BeFalse();
    }

    [Fact]
    public void A_miss_is_told_to_the_one_who_missed_and_the_other_goes_on()
    {
        var pair = Working();
        var missed = pair.Both.Turn;

        pair.Wait(30).Press("3E");

        pair.Both.Both[missed].LastSet!.Set.Done.Should().Be(3);
        pair.Both.Both[missed].Notice!.Text.Should().StartWith("3 of 5 reps");
        pair.Both.Turn.Should().NotBe(missed);
    }

    [Fact]
    public void One_leaves_and_the_other_goes_on_alone_from_the_same_bar()
    {
        var pair = Working().Lift().RestOut();
        var (left, stays) = (pair.Both.Turn, 1 - pair.Both.Turn);
        var onBar = pair.Both.InTurn.OnBar;

        pair.Press(left == 0 ? "/*3" : "/*4");

        pair.Both.Turn.Should().Be(stays);
        pair.Both.InTurn.OnBar.Should().Be(onBar);
        pair.Both.InTurn.Share.Should().BeNull();
        pair.Both.Both[left].Record.SharedWith.Should().BeNull();
        pair.Both.Both[left].Record.Closed.Should().BeFalse("that session can go on another time");
        pair.To(b => b.InTurn.Phase is Finishing).Wait(2).Press("E").Both.Both[stays].Record.Closed.Should().BeTrue();
        pair.Asked[^1].Effect.Should().BeOfType<Leave>();
    }

    [Fact]
    public void Cutting_short_ends_one_session_and_the_other_goes_on()
    {
        var pair = Working().Lift().RestOut();
        var leaves = pair.Both.Turn;

        pair.Press("/53").Wait(2).Press("E");

        pair.Both.Both[leaves].Record.Closed.Should().BeTrue();
        pair.Both.Turn.Should().Be(1 - leaves);
        pair.Asked.Should().NotContain(x => x.Effect is Leave, "the screen stays for the other");
    }

    [Fact]
    public void A_stop_brings_both_back_with_the_same_bar_and_the_same_turn()
    {
        var pair = Pair.Strength().Check();
        for (var i = 0; i < 40 && !pair.Both.Alone; i++)
        {
            pair.Forward();
            var again = pair.Again(0);

            again.Both.InTurn.OnBar.Should().BeEquivalentTo(pair.Both.InTurn.OnBar);
            again.Both.Both.Select(s => s.Place.Current?.Key).Should().Equal(pair.Both.Both.Select(s => s.Place.Current?.Key));
            if (pair.Both.Both.All(s => s.Place.Current is SetItem { Slot: "squat" }))
            {
                again.Who.Should().Be(pair.Who);
            }
        }
    }

    [Fact]
    public void A_rest_goes_on_through_a_stop_for_both()
    {
        var pair = Working().Lift().RestOut().Lift().Wait(10);
        var left = pair.Both.Both.Select(s => ((Resting)s.Phase).Clock.Left(pair.Now)).ToList();

        pair.Again(20).Both.Both.Select(s => ((Resting)s.Phase).Clock.Left(pair.Now + Duration.FromSeconds(20)))
            .Should().Equal(left.Select(l => Duration.Max(Duration.Zero, l - Duration.FromSeconds(20))));
    }

    [Fact]
    public void The_bar_stays_where_it_is_until_both_are_done_there()
    {
        var pair = Pair.Strength(ottoline: 25, bram: 90).Check().To(b => b.Both[0].Place.Current is SetItem { Slot: "row" });
        pair.OfBram.Place.Current.Should().BeOfType<WorkItem>().Which.Slot.Should().Be("squat");

        pair.Who.Should().Be('B');
        pair.Both.Why.Should().Be("the bar stays where it is until Bram is done there");
        pair.To(b => b.Both[1].Place.Current is SetItem { Slot: "row" }).Ottoline.Place.Work("row").Should().BeEmpty();
    }

    [Fact]
    public void Away_from_the_bar_nobody_waits_for_the_other()
    {
        var pair = Pair.Strength().Check().To(b => b.Both.All(s => s.Place.Current is SetItem { Slot: "curl" or "extension" or "core" } or HoldItem));

        pair.Both.Order.Should().BeNull();
        for (var i = 0; i < 12 && !pair.Both.Alone; i++)
        {
            var before = pair.Sets.Count;
            pair.Forward();
            if (pair.Sets.Count > before && pair.Both.Both.All(s => s.Phase is Resting))
            {
                Left(pair.Both.InTurn, pair.Now).Should().BeLessThanOrEqualTo(Left(pair.Both.Other, pair.Now));
            }
        }
    }

    [Fact]
    public void Every_event_is_answered_wherever_they_stand()
    {
        foreach (var pair in new[] { Pair.Strength(), Working(), Working().Lift(), Working().Press("/"), Working().Press("/*"), Working().Press("*6") })
        {
            foreach (var e in new SessionEvent[] { new Accepted(pair.Now), new DigitTyped(pair.Now, 7), new PointTyped(pair.Now), new MoreAsked(pair.Now), new FewerAsked(pair.Now), new OtherAsked(pair.Now), new MenuAsked(pair.Now), new BackAsked(pair.Now), new UndoAsked(pair.Now), new LeafAsked(pair.Now, Leaf.Help), new LeafAsked(pair.Now, Leaf.StopSigns), new LeaveAsked(pair.Now), new Ticked(pair.Now), new OddKey(pair.Now) })
            {
                var step = () => BarSteps.Step(pair.Both, e);
                step.Should().NotThrow();
            }
        }
    }

    private static Duration Left(Session s, Instant now) => ((Resting)s.Phase).Clock.Left(now);

    private static Pair Working() => Pair.Strength().Check().To(b => b.Both.All(s => s.Place.Current is WorkItem { Slot: "squat" })).RestOut();
}
