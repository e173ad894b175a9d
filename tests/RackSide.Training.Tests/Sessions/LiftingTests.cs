using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

public sealed class LiftingTests
{
    private static readonly SessionRecord Monday = TollboothDay.SquatOnMonday(57.5m, 5, 5, 5, 5, 5);

    private static Rack AtFirstWorkingSet() => Rack.Strength(Monday).To(i => i is WorkItem).RestOut();

    private static SetDone LastSet(Rack rack) => rack.Written.OfType<SetDone>().Last();

    // Standard S1 of docs/screen.md.
    [Fact]
    public void A_set_as_planned_takes_one_key()
    {
        var rack = AtFirstWorkingSet();
        var before = rack.Keys;

        rack.Lift();

        (rack.Keys - before).Should().Be(1);
        LastSet(rack).Should().BeEquivalentTo(new { Slot = "squat", Kind = SetKind.Working, Number = 1, Target = 5, Done = 5, Load = Mass.Kg(60) });
        rack.Phase.Should().BeOfType<Resting>();
    }

    // Standard S1 of docs/screen.md.
    [Theory]
    [InlineData("3E", 3)]
    [InlineData("-E", 4)]
    [InlineData("+E", 6)]
    [InlineData("11E", 11)]
    [InlineData("0E", 0)]
    public void Missed_or_more_reps_take_at_most_three_keys(string keys, int done)
    {
        var rack = AtFirstWorkingSet().Wait(30).Press(keys);

        LastSet(rack).Done.Should().Be(done);
        keys.Length.Should().BeLessThanOrEqualTo(3);
    }

    // Standard S1 of docs/screen.md.
    [Theory]
    [InlineData("*-E", 57.5, 5)]
    [InlineData("*+E", 62.5, 5)]
    [InlineData("*-*3E", 57.5, 3)]
    [InlineData("*55E", 55, 5)]
    [InlineData("*57.5E", 57.5, 5)]
    [InlineData("4*57.5E", 57.5, 4)]
    public void The_other_weight_is_a_step_or_a_number_away(string keys, double kg, int reps)
    {
        var rack = AtFirstWorkingSet().Wait(30).Press(keys);

        LastSet(rack).Should().BeEquivalentTo(new { Load = Mass.Kg((decimal)kg), Done = reps });
    }

    [Fact]
    public void The_next_set_of_the_slot_is_offered_at_the_load_just_used()
    {
        var rack = AtFirstWorkingSet().Wait(30).Press("*-E").RestOut();

        SetInHand.Load(rack.Session, (Lifting)rack.Phase).Should().Be(Mass.Kg(57.5m));
    }

    [Theory]
    [InlineData("*65.3E", "not loadable")]
    [InlineData("*100E", "far from")]
    [InlineData("31E", "reps are many")]
    public void A_doubtful_number_is_asked_about_once_and_the_same_key_settles_it(string keys, string words)
    {
        var rack = AtFirstWorkingSet().Wait(30);
        var sets = rack.Written.OfType<SetDone>().Count();

        rack.Press(keys);

        ((Lifting)rack.Phase).Doubt.Should().Contain(words);
        rack.Written.OfType<SetDone>().Should().HaveCount(sets);
        rack.Wait(1).Press("E").Written.OfType<SetDone>().Should().HaveCount(sets + 1);
    }

    [Fact]
    public void A_set_accepted_within_five_seconds_is_asked_about()
    {
        var rack = AtFirstWorkingSet();
        rack.Wait(30).Press("E").Wait(30).Press("E");
        rack.Phase.Should().BeOfType<Lifting>();

        rack.Wait(2).Press("E");

        ((Lifting)rack.Phase).Doubt.Should().Be("that was quick");
    }

    [Fact]
    public void A_bouncing_key_writes_one_set()
    {
        var rack = AtFirstWorkingSet().Wait(30);
        var sets = rack.Written.OfType<SetDone>().Count();

        rack.Press("E").Wait(0.1).Press("E").Wait(0.1).Press("E");

        rack.Written.OfType<SetDone>().Should().HaveCount(sets + 1);
        rack.Phase.Should().BeOfType<Resting>();
    }

    [Fact]
    public void Another_key_between_two_presses_makes_the_second_a_press_and_no_bounce()
    {
        var rack = AtFirstWorkingSet().Wait(30);
        var sets = rack.Written.OfType<SetDone>().Count();

        rack.Press("*85E").Wait(0.1).Press("/").Wait(0.1).Press("E");

        rack.Written.OfType<SetDone>().Should().HaveCount(sets + 1);
    }

    [Fact]
    public void ENTER_is_dead_for_a_moment_after_the_screen_turned_by_itself()
    {
        var rack = AtFirstWorkingSet().Lift();
        rack.Wait(120).Phase.Should().BeOfType<Lifting>();

        rack.Wait(1).Press("E");

        rack.Said.Should().StartWith("the screen just turned");
        rack.Written.OfType<SetDone>().Last().Number.Should().Be(1);
    }

    [Theory]
    [InlineData("3/")]
    [InlineData("*62.5/")]
    [InlineData("--.")]
    public void What_is_changed_and_not_written_is_cleared_by_one_key(string keys)
    {
        var rack = AtFirstWorkingSet().Wait(30);
        var facts = rack.Session.Facts.Count;

        rack.Press(keys);

        rack.Session.Facts.Should().HaveCount(facts);
        SetInHand.Reps(rack.Session, (Lifting)rack.Phase).Should().Be(5);
        SetInHand.Load(rack.Session, (Lifting)rack.Phase).Should().Be(Mass.Kg(60));
    }

    // Standard S6 of docs/screen.md.
    [Fact]
    public void Written_is_true_only_when_the_disk_has_answered()
    {
        var rack = AtFirstWorkingSet().Wait(30);
        rack.DiskAnswers = false;

        rack.Press("E");

        var set = rack.Session.LastSet!.Set;
        rack.Session.Unwritten.Should().Contain(set.Id);
        rack.Answer(set);
        rack.Session.Unwritten.Should().BeEmpty();
    }

    [Fact]
    public void A_set_that_cannot_be_written_stays_and_the_trouble_is_told_until_it_is()
    {
        var rack = AtFirstWorkingSet().Wait(30);
        rack.DiskAnswers = false;
        rack.Press("E");
        var set = rack.Session.LastSet!.Set;

        rack.Send(new WriteFailed(rack.Now, set.Id, "the disk is full"));

        rack.Session.WriteTrouble.Should().Be("the disk is full");
        rack.Session.LastSet!.Set.Should().Be(set);
        rack.Answer(set);
        rack.Session.WriteTrouble.Should().BeNull();
    }

    [Fact]
    public void A_miss_says_what_follows_without_blame()
    {
        var rack = AtFirstWorkingSet().Wait(30).Press("3E");

        rack.Said.Should().Be("3 of 5 reps; next time the same again");
    }

    [Fact]
    public void The_ramp_has_no_clock_and_the_first_working_set_has_a_full_rest_before_it()
    {
        var rack = Rack.Strength(Monday).Check();
        rack.InHand.Should().BeOfType<RampItem>();
        rack.Lift();
        rack.Phase.Should().BeOfType<Lifting>("plates are changed between ramp sets, and that is the rest");

        rack.To(i => i is WorkItem);

        rack.Phase.Should().BeOfType<Resting>().Which.Clock.Left(rack.Now).TotalSeconds.Should().BeApproximately(120, 1);
    }
}
