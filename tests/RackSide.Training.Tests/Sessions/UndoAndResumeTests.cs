using CsCheck;
using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

public sealed class UndoAndResumeTests
{
    private const string Pad = "EEEEEE0123456789+-*/.";

    private static Session Resumed(Rack rack) =>
        Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, rack.Now);

    // Standard S1 of docs/screen.md.
    [Fact]
    public void Undo_strikes_the_set_by_a_new_fact_and_opens_it_again()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift();
        var set = rack.Session.LastSet!.Set;
        var facts = rack.Session.Facts.Count;

        rack.Wait(3).Press(".");

        rack.Session.Facts.Should().HaveCount(facts + 1).And.Contain(set);
        rack.Written.Last().Should().BeOfType<FactStruck>().Which.Struck.Should().Be(set.Id);
        rack.Session.Record.Sets.Should().NotContain(s => s.Set.Id == set.Id);
        rack.InHand.Should().BeOfType<WorkItem>().Which.Number.Should().Be(1);
        rack.Phase.Should().BeOfType<Lifting>("the rest is gone with the set");
        rack.Said.Should().Be("taken back: set 1, 5 reps");
    }

    // Standard S21 of docs/screen.md.
    [Fact]
    public void Undo_has_no_end_inside_the_session()
    {
        var rack = Rack.Strength().To(i => i is HoldItem);

        for (var i = 0; i < 200 && Undoing.Next(rack.Session) is not null; i++)
        {
            rack.Wait(1).Press(".");
        }

        rack.Session.Place.Index.Should().Be(0);
        rack.Session.Record.Sets.Should().BeEmpty();
    }

    // Standard S9 of docs/screen.md.
    [Fact]
    public void A_session_resumed_in_mid_rest_has_the_same_set_next_and_the_rest_goes_on_by_the_clock()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift().Wait(50);

        var later = rack.Now + Duration.FromSeconds(30);
        var resumed = Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, later);

        resumed.Place.Current.Should().BeEquivalentTo(new { Slot = "squat", Number = 2 });
        resumed.Phase.Should().BeOfType<Resting>().Which.Clock.Left(later).Should().Be(Duration.FromSeconds(40));
    }

    [Theory]
    [InlineData("4")]
    [InlineData("3")]
    public void An_exercise_left_out_in_a_held_rest_ends_that_rest_also_for_a_resumed_session(string line)
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift().Wait(5).Press("0").Wait(5).Press("/").Wait(1).Press("5").Wait(1).Press(line);

        var resumed = Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, rack.Now);

        rack.Session.Record.Facts.Should().Contain(f => f is SlotLeftOut);
        resumed.Phase.Should().BeOfType(rack.Phase.GetType()).And.NotBeOfType<Resting>();
    }

    [Fact]
    public void A_session_resumed_after_the_rest_is_over_waits_for_the_lift()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift();

        var resumed = Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, rack.Now + Duration.FromHours(1));

        resumed.Phase.Should().BeOfType<Lifting>();
    }

    [Fact]
    public void A_session_resumed_where_other_things_are_to_be_confirmed_goes_on_at_its_set()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift();
        var setting = rack.Session.Setting with { Checks = [new Training.Safety.CheckItem("kit-sound", "bench and bands sound")] };

        var resumed = Session.Resume(setting, rack.Session.Record, rack.Session.NextId, rack.Now);

        resumed.Place.Current.Should().BeEquivalentTo(new { Slot = "squat", Number = 2 });
    }

    [Fact]
    public void A_clock_that_woke_in_the_past_does_not_lengthen_the_rest_of_a_resumed_session()
    {
        var rack = Rack.Strength().To(i => i is WorkItem).RestOut().Lift().Wait(30);

        var resumed = Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, rack.Now - Duration.FromDays(3));

        resumed.Phase.Should().BeOfType<Resting>().Which.Clock.Left(resumed.Now).Should().Be(Duration.FromMinutes(2));
    }

    [Fact]
    public void Whatever_was_pressed_a_resumed_session_stands_where_the_stopped_one_did() =>
        Gen.Select(Gen.Int[0, Pad.Length - 1], Gen.Double[0.05, 45]).Array[1, 120].Sample(presses =>
        {
            var rack = Rack.Strength();
            foreach (var (key, wait) in presses)
            {
                rack.Wait(wait).Press(Pad[key..(key + 1)]);
            }

            var resumed = Resumed(rack);

            var stopped = Uncovered(rack.Phase);
            return resumed.Place.Current?.Key == rack.InHand?.Key
                && resumed.Record.Sets.SequenceEqual(rack.Session.Record.Sets)
                && (stopped is not Resting rest || (resumed.Phase is Resting again
                    && again.Clock.Left(rack.Now) == rest.Clock.Left(rack.Now) && again.After == rest.After))
                && (rack.Phase is Ended || stopped is Resting || resumed.Phase is not Resting);
        }, iter: 300, seed: "0000RackSide1");

    [Fact]
    public void Identities_are_never_used_twice_whatever_is_pressed() =>
        Gen.Int[0, Pad.Length - 1].Array[1, 150].Sample(keys =>
        {
            var rack = Rack.Skills();
            foreach (var key in keys)
            {
                rack.Wait(7).Press(Pad[key..(key + 1)]);
            }

            return rack.Written.Select(f => f.Id).Distinct().Count() == rack.Written.Count();
        }, iter: 200, seed: "0000RackSide2");

    private static Phase Uncovered(Phase phase) => phase switch
    {
        Choosing choosing => Uncovered(choosing.Under),
        Reading reading => Uncovered(reading.Under),
        _ => phase,
    };
}
