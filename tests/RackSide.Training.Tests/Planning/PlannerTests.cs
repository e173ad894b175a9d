using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Planning;

public class PlannerTests
{
    [Fact]
    public void The_first_day_asks_for_every_slot_in_order_and_starts_light()
    {
        var today = Today(TrainingHistory.Empty, Monday);

        today.Due.Kind.Should().Be(DueKind.Train);
        today.Day.Should().Be(StrengthDay);
        today.Prescriptions.Select(Words).Should().Equal(
            "squat back-squat 20 kg 5 5 5 5 5",
            "row bb-row 20 kg 6 6 6",
            "bench bench-press 20 kg 6 6 6",
            "pull assisted-chin-up 30 kg 6 6 6",
            "press overhead-press 20 kg 6 6 6",
            "curl db-curl 2.5 kg 6 6 6",
            "extension overhead-ext 2.5 kg 6 6 6",
            "core plank-forearm  20 20 20");
        today.Prescriptions[5].Group.Should().Be("arms");
        today.LeftOut.Should().BeEmpty();
    }

    [Fact]
    public void The_second_strength_day_follows_from_the_first()
    {
        var history = Live(TrainingHistory.Empty, Monday, (p, i) => p.Slot == "row" ? 10 - i : p.Targets[i]);

        var friday = Today(history, Monday.PlusDays(4));

        friday.Prescriptions.Take(3).Select(Words).Should().Equal(
            "squat back-squat 20 kg 6 6 6 6 6", "row bb-row 20 kg 9 9 9", "bench bench-press 20 kg 7 7 7");
        friday.Prescriptions[0].Why.Line.Should().Be("all 5x5 done on Mon 2 Nov: the next load is 13 % more, so 6 reps first");
        friday.Prescriptions[0].Why.Advice.Should().Be("a pair of 1 kg plates would make smaller steps");
    }

    [Fact]
    public void A_rest_day_has_no_prescriptions_and_names_the_next_date()
    {
        var tuesday = Today(Live(TrainingHistory.Empty, Monday, AsAsked), Monday.PlusDays(1));

        tuesday.Due.Kind.Should().Be(DueKind.Rest);
        tuesday.Due.Next.Should().Be(Monday.PlusDays(2));
        tuesday.Prescriptions.Should().BeEmpty();
        tuesday.Estimate.Should().Be(Duration.Zero);
    }

    [Fact]
    public void A_day_asked_for_comes_with_its_caution()
    {
        var today = Today(Live(TrainingHistory.Empty, Monday, AsAsked), Monday.PlusDays(1), SkillsDay);

        today.Day.Should().Be(SkillsDay);
        today.Due.Why.Should().StartWith("asked for: you trained yesterday");
    }

    [Fact]
    public void The_skills_day_holds_ticks_and_counts()
    {
        var wednesday = Today(Live(TrainingHistory.Empty, Monday, AsAsked), Monday.PlusDays(2));

        wednesday.Prescriptions.Select(Words).Should()
            .Equal("wrists wrists  ", "handstand wall-handstand  10 10 10", "push-ups push-up  100");
    }

    [Fact]
    public void Head_down_work_is_left_out_for_a_lifter_who_is_to_avoid_it_and_it_is_said()
    {
        var careful = Ottoline with { AvoidInverted = true };

        var today = Planner.For(Beginners, AllExercises, Garage, careful, TrainingHistory.Empty, Monday, SkillsDay);

        today.Prescriptions.Select(p => p.Slot).Should().Equal("wrists", "push-ups");
        today.LeftOut.Should().Equal("handstand is left out: nothing in this kit can fill it");
    }

    [Fact]
    public void A_slot_takes_the_first_exercise_that_the_kit_allows()
    {
        var pull = StrengthDay.Slots[3];
        var withStack = Garage with { Equipment = Garage.Equipment.Append("cable stack").ToHashSet(), Stack = [Mass.Kg(5), Mass.Kg(10)] };

        Planner.Fill(pull, AllExercises, Garage, Ottoline)!.Id.Should().Be("assisted-chin-up");
        Planner.Fill(pull, AllExercises, withStack, Ottoline)!.Id.Should().Be("lat-pulldown");
    }

    [Fact]
    public void A_stack_without_positions_gives_no_load_so_it_does_not_count()
    {
        var noLoads = Garage with { Equipment = Garage.Equipment.Append("cable stack").ToHashSet() };

        Planner.Fill(StrengthDay.Slots[3], AllExercises, noLoads, Ottoline)!.Id.Should().Be("assisted-chin-up");
    }

    [Fact]
    public void Without_any_listed_exercise_another_of_the_motion_told_alike_fills_the_slot()
    {
        var bare = Garage with { Equipment = new HashSet<string> { "pull-up bar" } };

        Planner.Fill(StrengthDay.Slots[0], AllExercises, bare, Ottoline)!.Id.Should().Be("air-squat");
        Planner.Fill(StrengthDay.Slots[3], AllExercises, bare, Ottoline).Should().BeNull("a hang is told in seconds, the slot in reps");
    }

    [Fact]
    public void Others_are_of_the_same_motion_allowed_and_not_the_one_that_fills_the_slot()
    {
        var squat = StrengthDay.Slots[0];

        Planner.Others(squat, AllExercises["back-squat"], AllExercises, Garage, Ottoline).Select(e => e.Id)
            .Should().Equal("goblet-squat", "air-squat");
        Planner.Others(squat, AllExercises["goblet-squat"], AllExercises, Garage, Ottoline).Select(e => e.Id)
            .Should().Equal("back-squat", "air-squat");
    }

    [Fact]
    public void A_swap_starts_from_what_was_done_of_that_exercise()
    {
        var swapped = Planner.Prescribe(
            StrengthDay.Slots[0], AllExercises["goblet-squat"], Garage, Live(TrainingHistory.Empty, Monday, AsAsked), Monday.PlusDays(4));

        swapped.Load.Should().Be(Mass.Kg(2.5m));
        swapped.Why.Code.Should().Be("first-time");
    }

    [Fact]
    public void A_renamed_slot_keeps_its_loads()
    {
        var renamed = StrengthDay.Slots[0] with { Key = "legs" };

        var next = Planner.Prescribe(
            renamed, AllExercises["back-squat"], Garage, Live(TrainingHistory.Empty, Monday, (_, _) => 7), Monday.PlusDays(4));

        next.Load.Should().Be(Mass.Kg(22.5m));
    }

    [Fact]
    public void A_session_left_before_its_first_working_set_is_not_a_day_trained()
    {
        var begun = Session(Today(TrainingHistory.Empty, Monday), Monday, AsAsked);
        var left = new TrainingHistory([begun with { Facts = [] }]);

        Today(left, Monday).Due.Kind.Should().Be(DueKind.Train);
        Today(new TrainingHistory([begun]), Monday).Due.Kind.Should().Be(DueKind.DoneToday);
    }

    [Fact]
    public void A_skills_day_counts_when_it_is_closed_because_its_log_is_optional()
    {
        var history = Live(TrainingHistory.Empty, Monday, AsAsked);
        var wednesday = Monday.PlusDays(2);
        var skills = Session(Today(history, wednesday), wednesday, AsAsked);
        var closed = skills with { Facts = [skills.Facts[^1]] };

        Today(new TrainingHistory([.. history.Sessions, closed]), wednesday).Due.Kind.Should().Be(DueKind.DoneToday);
    }

    [Fact]
    public void The_plates_needed_are_the_most_of_each_that_any_set_needs()
    {
        // 60 kg is 20 a side and its ramp 30, 40 (5 and 10 a side) and 50 (15); nothing else needs more.
        var history = TrainingHistory.Empty;
        for (var (date, i) = (Monday, 0); i < 16; i++, date = date.PlusDays(i % 2 == 0 ? 3 : 4))
        {
            history = Live(history, date, (_, _) => 7);
        }

        var today = Today(history, history.Sessions[^1].Head.Date.PlusDays(4), StrengthDay);

        today.Prescriptions[0].Load.Should().Be(Mass.Kg(60));
        today.PlatesNeeded.Should().Equal(Mass.Kg(20), Mass.Kg(15), Mass.Kg(10), Mass.Kg(5));
    }

    [Fact]
    public void A_strength_day_takes_about_an_hour()
    {
        // By hand: squat 5 x (40 + 120) = 800; four lifts of 3 x (40 + 90) = 1560; pair 3 x (80 + 15 + 60) = 465; plank
        // 3 x (20 + 60) = 240. No ramp at the empty bar, but seven searches of 2 x 45 + 60.
        Today(TrainingHistory.Empty, Monday).Estimate.Should().Be(Duration.FromSeconds(800 + 1560 + 465 + 240 + (7 * 150)));
    }

    [Fact]
    public void A_skills_day_takes_its_minutes_seconds_and_reps()
    {
        // 3 min tick, holds 3 x (10 + 60) s, 100 reps of 6 s.
        Today(TrainingHistory.Empty, Monday, SkillsDay).Estimate.Should().Be(Duration.FromSeconds(180 + 210 + 600));
    }

    [Fact]
    public void One_sided_holds_and_warm_up_sets_take_their_time()
    {
        var side = Planner.Prescribe(StrengthDay.Slots[7], AllExercises["side-plank"], Garage, TrainingHistory.Empty, Monday);
        var ramped = side with { Ramp = [new RampSet(Mass.Kg(20), 5)] };

        TimeEstimate.Of([side], AllExercises).Should().Be(Duration.FromSeconds((2 * 60) + 180));
        TimeEstimate.Of([ramped], AllExercises).Should().Be(Duration.FromSeconds((2 * 60) + 180 + 45 + 60));
    }

    [Fact]
    public void Half_a_year_lived_through_asks_only_for_what_can_be_loaded_and_never_on_neighbouring_days()
    {
        var chance = new Random(20261102);
        var history = TrainingHistory.Empty;
        for (var date = Monday; date < Monday.PlusDays(182); date = date.PlusDays(1))
        {
            if (chance.Next(5) > 0)
            {
                history = Live(history, date, (p, i) => Math.Max(0, p.Targets[i] + chance.Next(-1, 3)));
            }
        }

        history.Sessions.Count.Should().BeGreaterThan(50);
        history.Sessions.Zip(history.Sessions.Skip(1)).Should().OnlyContain(p => (p.Second.Head.Date - p.First.Head.Date).Days > 1);
        history.Sessions.SelectMany(s => s.Prescriptions).Where(p => p.Load is not null).Should().OnlyContain(p =>
            Loads.For(AllExercises[p.Exercise], Garage)!.Has(p.Load!.Value));
        history.Sessions.SelectMany(s => s.Prescriptions).Max(p => p.Load!.GetValueOrDefault().Amount).Should().BeGreaterThan(30);
    }

    private static string Words(Prescription p) => $"{p.Slot} {p.Exercise} {p.Load} {string.Join(' ', p.Targets)}";
}
