using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

/// <summary>Another slot first, and a word beside a set.</summary>
public sealed class OrderAndNotesTests
{
    [Fact]
    public void Another_slot_is_done_next_and_then_the_rest_in_the_plans_order()
    {
        var rack = MidSquat().Press("/12");

        rack.Written.OfType<SlotMoved>().Should().ContainSingle().Which.Slot.Should().Be("row");
        Slots(rack).Should().Equal("row", "squat", "curl", "extension", "core");

        rack.To(i => i is WorkItem { Slot: "row" }).To(i => i is SlotItem { Slot: "squat" });
        rack.InHand.Should().BeOfType<WorkItem>().Which.Number.Should().Be(2, "no ramp again, and no set twice");
        rack.To(i => i is SlotItem { Slot: "curl" or "extension" or "core" });
        rack.Session.Record.Sets.Where(r => r.Set.Kind == SetKind.Working && r.Set.Slot == "squat").Should().HaveCount(5);
    }

    [Fact]
    public void What_is_finished_stands_first_in_the_order()
    {
        var rack = Rack.Strength().To(i => i is SlotItem { Slot: "row" }).Press("/12");

        Slots(rack).Should().Equal("squat", "curl", "extension", "row", "core");
        ((SlotItem)rack.InHand!).Slot.Should().Be("curl");
    }

    [Fact]
    public void A_group_moves_as_one()
    {
        var rack = MidSquat().Press("/14");

        Slots(rack).Should().Equal("curl", "extension", "squat", "row", "core");
        rack.InHand.Should().BeAssignableTo<SlotItem>().Which.Slot.Should().Be("curl");
    }

    [Fact]
    public void A_rest_goes_on_and_one_key_takes_the_order_back()
    {
        var rack = MidSquat().Lift().Wait(20).Press("/12");
        rack.Phase.Should().BeOfType<Resting>();
        ((SlotItem)rack.InHand!).Slot.Should().Be("row");

        rack.Wait(1).Press(".");

        rack.Phase.Should().BeOfType<Resting>();
        Slots(rack).Should().StartWith(["squat", "row"]);
    }

    [Fact]
    public void A_resumed_session_stands_in_the_order_it_was_given()
    {
        var rack = MidSquat().Press("/12");

        var again = Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, rack.Now);

        again.Place.Current!.Key.Should().Be(rack.InHand!.Key);
    }

    [Fact]
    public void A_digit_without_a_slot_moves_nothing()
    {
        var rack = MidSquat().Press("/19");

        rack.Written.OfType<SlotMoved>().Should().BeEmpty();
        rack.Said.Should().Contain("does nothing here");
    }

    [Fact]
    public void A_ready_note_is_four_keys_and_stays_with_its_set()
    {
        var rack = MidSquat().Press("/*12");

        var note = rack.Written.Last().Should().BeOfType<NoteTold>().Subject;
        note.Text.Should().Be("felt hard");
        note.Set.Should().Be(rack.Session.LastSet!.Set.Id);
        new TrainingHistory([rack.Session.Record]).Of("back-squat").Single().Notes.Should().Equal("felt hard");
    }

    [Fact]
    public void A_note_in_ones_own_words_takes_letters_that_mean_verbs_elsewhere()
    {
        var rack = MidSquat().Press("/*29");
        rack.Session.TakesText.Should().BeTrue();
        foreach (var letter in "mad x")
        {
            rack.Send(new TextTyped(rack.Now, letter));
        }

        rack.Send(new UndoAsked(rack.Now));
        rack.Press("7E");

        rack.Written.Last().Should().BeOfType<NoteTold>().Which.Should().Match<NoteTold>(n => n.Text == "mad 7" && n.Set == null);
        Notes.OnItself(rack.Session.Record).Should().Equal("mad 7");
        rack.Wait(1).Press(".").Phase.Should().BeOfType<Lifting>();
        Notes.OnItself(rack.Session.Record).Should().BeEmpty();
    }

    [Fact]
    public void A_note_too_long_or_of_no_letters_is_refused_with_what_is_typed_kept()
    {
        var rack = MidSquat().Press("/*29");
        for (var i = 0; i < Noting.Room + 5; i++)
        {
            rack.Send(new TextTyped(rack.Now, 'a'));
        }

        ((Choosing)rack.Phase).Typed.Should().HaveLength(Noting.Room);
        rack.Send(new UndoAsked(rack.Now));
        rack.Send(new TextTyped(rack.Now, '\u0007'));
        ((Choosing)rack.Phase).Typed.Should().HaveLength(Noting.Room - 1);
    }

    [Fact]
    public void Taking_a_note_back_ends_no_rest()
    {
        var rack = MidSquat().Lift().Wait(20).Press("/*11").Wait(1).Press(".");

        rack.Phase.Should().BeOfType<Resting>();
        rack.Session.Record.Standing.OfType<NoteTold>().Should().BeEmpty();
    }

    [Fact]
    public void The_settings_are_asked_of_the_world_and_the_session_stays_as_it_is()
    {
        var rack = MidSquat();
        var before = rack.Phase;

        rack.Press("/*5");

        rack.Asked.Last().Should().BeOfType<OpenSettings>();
        rack.Phase.Should().Be(before);
    }

    private static Rack MidSquat() => Rack.Strength().To(i => i is WorkItem).RestOut().Lift().RestOut();

    private static IEnumerable<string> Slots(Rack rack) => rack.Session.Place.Prescriptions.Select(p => p.Slot);
}
