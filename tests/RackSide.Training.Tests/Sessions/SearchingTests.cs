using CsCheck;
using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Progression;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

/// <summary>The first session of an exercise: search sets in place of the ramp, one question after each.</summary>
public sealed class SearchingTests
{
    private static readonly string[] Answers = ["E", "25E", "9E", "12E", "5E", "2E", "0E", "3E", ".", "*+E", "*-E", "1", "/21"];

    private static Rack AtFirstSearchSet() => Rack.Strength().Check();

    private static Session Resumed(Rack rack) =>
        Session.Resume(rack.Session.Setting, rack.Session.Record, rack.Session.NextId, rack.Now);

    private static SetItem Set(Rack rack) => (SetItem)rack.InHand!;

    private static Mass? Found(Rack rack) => rack.Session.Place.Prescriptions[0].Load;

    [Fact]
    public void The_first_time_begins_with_a_set_of_the_empty_bar_and_a_question()
    {
        var rack = AtFirstSearchSet();
        Set(rack).Should().BeOfType<SearchItem>().Which.Should().BeEquivalentTo(new { Number = 1, Target = 5, Load = Mass.Kg(20), Kind = SetKind.WarmUp });

        rack.Lift();

        rack.Phase.Should().BeOfType<Asking>();
        AnswerInHand.Left((Asking)rack.Phase).Should().Be(LoadSearch.SafeAnswer);
        rack.Wait(1).Press("E").Written.OfType<RepsLeftTold>().Should().ContainSingle().Which.Left.Should().Be(4);
        rack.Phase.Should().BeOfType<Resting>();
        Set(rack).Should().BeOfType<WorkItem>().Which.Load.Should().Be(Mass.Kg(20));
    }

    [Fact]
    public void ENTER_alone_trains_the_whole_first_session_at_the_lightest_loads()
    {
        var rack = Rack.Strength().To(i => i is null);

        var work = rack.Session.Record.Sets.Where(s => s.Set is { Kind: SetKind.Working, Load: not null }).ToList();
        work.Where(s => s.Set.Slot is "squat" or "row").Should().HaveCount(8).And.OnlyContain(s => s.Set.Load == Mass.Kg(20) && s.OnTarget);
        work.Where(s => s.Set.Slot == "curl").Should().HaveCount(3).And.OnlyContain(s => s.Set.Load == Mass.Kg(5) && s.OnTarget);
    }

    [Fact]
    public void While_it_is_easy_the_next_load_follows_at_once_and_the_working_sets_stay_where_four_or_five_are_left()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E");
        Set(rack).Should().BeOfType<SearchItem>().Which.Load.Should().Be(Mass.Kg(30));
        rack.Phase.Should().BeOfType<Lifting>("plates are changed between search sets, and that is the rest");
        rack.Said.Should().Be("30 kg next");

        rack.Lift().Press("10E").Lift().Press("5E");

        rack.Said.Should().Be("35 kg it is, for today");
        Found(rack).Should().Be(Mass.Kg(35));
        rack.Phase.Should().BeOfType<Resting>().Which.Clock.Left(rack.Now).TotalSeconds.Should().BeApproximately(120, 1, "three sets went before");
        rack.RestOut().Lift().Session.LastSet!.Set.Should().BeEquivalentTo(new { Kind = SetKind.Working, Number = 1, Load = Mass.Kg(35), Done = 5 });
        ((SlotItem)rack.InHand!).Asked.Why.Should().BeEquivalentTo(new { Code = Reasons.FirstLoadFound, Line = "first time: 35 kg left 5 good reps" });
    }

    [Fact]
    public void The_next_session_goes_on_from_the_load_found_and_no_search_set_counts()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E").Lift().Press("4E").To(i => i is SlotItem { Slot: "row" });

        var next = Planner.Prescribe(
            TollboothDay.Strength.Slots[0], TollboothDay.Catalogue["back-squat"], TollboothDay.Kit, new TrainingHistory([rack.Session.Record]), TollboothDay.Wednesday.PlusDays(2));

        next.Load.Should().Be(Mass.Kg(32.5m));
        next.Search.Should().BeNull();
        new TrainingHistory([rack.Session.Record]).Of("back-squat").Single().Sets.Should().HaveCount(5);
    }

    [Fact]
    public void A_search_set_that_falls_short_is_not_asked_about()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E").Wait(30).Press("3E");

        Set(rack).Should().BeOfType<WorkItem>().Which.Load.Should().Be(Mass.Kg(20));
        rack.Said.Should().Be("first time: 30 kg was too much, so 20 kg");
    }

    [Fact]
    public void Form_that_slipped_in_a_search_set_sends_the_load_back()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E").Lift().Press("5E");
        Found(rack).Should().Be(Mass.Kg(30));

        rack.Wait(2).Press("1");

        Found(rack).Should().Be(Mass.Kg(20));
        rack.Phase.Should().BeOfType<Resting>();
    }

    [Fact]
    public void A_load_chosen_by_hand_counts_as_lifted()
    {
        var rack = AtFirstSearchSet().Wait(30).Press("*+E").Press("12E");

        rack.Session.LastSet!.Set.Load.Should().Be(Mass.Kg(22.5m));
        Set(rack).Load.Should().Be(Mass.Kg(27.5m), "22.5 kg and 12 reps left give at most 24 per cent");
    }

    [Fact]
    public void Undo_takes_back_the_answer_and_then_the_set_and_then_the_answer_before_it()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E").Lift().Press("5E");

        rack.Wait(1).Press(".");
        rack.Said.Should().Be("taken back: answer, 5 left");
        rack.Phase.Should().BeOfType<Asking>();

        rack.Wait(1).Press(".");
        rack.Said.Should().Be("taken back: warm-up set 2");
        Set(rack).Should().BeOfType<SearchItem>().Which.Load.Should().Be(Mass.Kg(30));

        rack.Wait(1).Press(".");
        rack.Said.Should().Be("taken back: answer, 25 left");
        rack.Press("8E").InHand.Should().BeOfType<SearchItem>().Which.Load.Should().Be(Mass.Kg(22.5m));
    }

    [Theory]
    [InlineData("", typeof(Asking), "squat/Left1")]
    [InlineData("25E", typeof(Lifting), "squat/WarmUp2")]
    [InlineData("4E", typeof(Resting), "squat/Working1")]
    [InlineData("7.", typeof(Asking), "squat/Left1")]
    public void Killed_in_mid_search_it_goes_on_at_the_same_set_or_question(string keys, Type phase, string key)
    {
        var rack = AtFirstSearchSet().Lift().Press(keys).Wait(1);

        var resumed = Resumed(rack);

        resumed.Phase.Should().BeOfType(phase);
        resumed.Place.Current!.Key.Should().Be(key);
    }

    [Fact]
    public void An_answer_taken_back_and_told_anew_rests_on_the_same_clock_after_a_kill()
    {
        var rack = AtFirstSearchSet().Lift().Press("9E").Wait(1).Press(".").Wait(1).Press("4E").Wait(3);
        var rest = rack.Phase.Should().BeOfType<Resting>().Subject;

        Resumed(rack).Phase.Should().BeOfType<Resting>().Which.Clock.Left(rack.Now).Should().Be(rest.Clock.Left(rack.Now));
    }

    [Fact]
    public void Thinking_about_the_answer_is_rest_too()
    {
        AtFirstSearchSet().Lift().Wait(20).Press("E").Phase
            .Should().BeOfType<Resting>().Which.Clock.Left(AtFirstSearchSet().Lift().Wait(20).Now).TotalSeconds.Should().BeApproximately(40, 1);
        AtFirstSearchSet().Lift().Wait(100).Press("E").Phase.Should().BeOfType<Lifting>();
    }

    [Fact]
    public void A_swap_in_mid_search_begins_a_search_of_the_other_exercise()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E").Press("/22");

        Set(rack).Should().BeOfType<SearchItem>().Which.Should().BeEquivalentTo(new { Number = 2, Load = Mass.Kg(5) });
        rack.Lift().Press("5E").RestOut().Lift().Session.LastSet!.Set.Should().BeEquivalentTo(new { Exercise = "goblet-squat", Kind = SetKind.Working, Load = Mass.Kg(5) });
    }

    [Fact]
    public void Cut_short_at_the_question_the_rest_is_left_out()
    {
        var rack = AtFirstSearchSet().Lift().Press("/53");

        rack.Phase.Should().BeOfType<Finishing>();
        rack.Session.Place.LeftOut.Should().HaveCount(5);
        rack.Wait(1).Press(".").Phase.Should().BeOfType<Asking>();
    }

    [Theory]
    [InlineData("12", 12)]
    [InlineData("123", 12)]
    [InlineData("+", 5)]
    [InlineData("---", 1)]
    [InlineData("9-", 8)]
    [InlineData("0", 0)]
    [InlineData("7/", 4)]
    [InlineData("7.", 4)]
    public void The_answer_is_typed_or_stepped_and_cleared_by_one_key(string keys, int left)
    {
        var rack = AtFirstSearchSet().Lift();
        var facts = rack.Session.Facts.Count;

        rack.Press(keys);

        AnswerInHand.Left((Asking)rack.Phase).Should().Be(left);
        rack.Session.Facts.Should().HaveCount(facts);
    }

    [Fact]
    public void A_kit_changed_in_mid_search_changes_no_search()
    {
        var rack = AtFirstSearchSet().Lift().Press("25E");
        var setting = rack.Session.Setting with { Loads = new KitLoads(TollboothDay.Kit with { Plates = [] }) };

        Session.Resume(setting, rack.Session.Record, rack.Session.NextId, rack.Now).Place.Current.Should().BeEquivalentTo(new { Load = Mass.Kg(30) });
    }

    /// <summary>Answers that climb and fall, and undo among them; the general test of resuming presses ENTER so often that few searches get far.</summary>
    [Fact]
    public void Whatever_is_answered_a_resumed_search_stands_where_the_stopped_one_did() =>
        Gen.Select(Gen.Int[0, Answers.Length - 1], Gen.Double[6, 90]).Array[1, 40].Sample(presses =>
        {
            var rack = AtFirstSearchSet();
            foreach (var (answer, wait) in presses)
            {
                rack.Wait(wait).Press(Answers[answer]);
            }

            var resumed = Resumed(rack);

            return resumed.Place.Current?.Key == rack.InHand?.Key
                && Equals((resumed.Place.Current as SetItem)?.Load, (rack.InHand as SetItem)?.Load)
                && resumed.Place.Prescriptions.Select(p => p.Load).SequenceEqual(rack.Session.Place.Prescriptions.Select(p => p.Load))
                && (rack.Phase is not Resting rest || (resumed.Phase is Resting again && again.Clock.Left(rack.Now) == rest.Clock.Left(rack.Now)))
                && (rack.Phase is not Asking || resumed.Phase is Asking);
        }, iter: 300, seed: "0000RackSide5");
}
