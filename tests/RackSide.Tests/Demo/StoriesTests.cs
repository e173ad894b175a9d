using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Skills;

namespace RackSide.Tests.Demo;

/// <summary>What demo/README.md tells of the two lifters is in their logbook, on whatever weekday it is opened.</summary>
public class StoriesTests
{
    public static TheoryData<int> Days => Lived.Days;

    [Theory]
    [MemberData(nameof(Days))]
    public void Both_start_at_the_empty_bar_and_climb(int day)
    {
        var lived = Lived.Until(day);
        foreach (var squats in lived.Lifters.Select(l => lived.History(l).Of("back-squat").ToList()))
        {
            squats[0].Asked.Load.Should().Be(Mass.Kg(20));
            squats[^1].Asked.Load!.Value.Should().BeGreaterThanOrEqualTo(Mass.Kg(50));
        }
    }

    [Theory]
    [MemberData(nameof(Days))]
    public void Ottolines_press_is_missed_three_times_gets_ten_per_cent_lighter_and_climbs_again(int day)
    {
        var presses = Lived.Until(day).History("ottoline").Of("overhead-press").ToList();

        var turn = presses.FindIndex(p => p.Asked.Why.Code == Reasons.ThirdMiss);

        turn.Should().BeGreaterThan(3);
        presses.Count(p => p.Asked.Why.Code == Reasons.ThirdMiss).Should().Be(1);
        var stalled = presses[turn - 1].Asked.Load!.Value;
        presses[(turn - 3)..turn].Should().OnlyContain(p => p.Asked.Load == stalled && p.Sets.Any(s => s.Set.Done < 6));
        presses[turn].Asked.Load!.Value.Should().BeLessThanOrEqualTo(stalled * 0.9m);
        presses[^1].Asked.Load!.Value.Should().BeGreaterThanOrEqualTo(stalled);
    }

    [Theory]
    [MemberData(nameof(Days))]
    public void A_week_away_brings_the_last_loads_again(int day)
    {
        var lived = Lived.Until(day);
        var squats = lived.History("ottoline").Of("back-squat").ToList();

        var back = squats.FindIndex(p => p.Asked.Why.Code == Reasons.ShortGap);

        back.Should().BePositive();
        Period.DaysBetween(squats[back - 1].Date, squats[back].Date).Should().BeInRange(8, 14);
        squats[back].Asked.Load.Should().Be(squats[back - 1].Asked.Load);
    }

    [Theory]
    [MemberData(nameof(Days))]
    public void One_evening_the_two_share_the_bar_and_take_turns_at_it(int day)
    {
        var shared = Lived.Until(day).All.Where(s => s.SharedWith is not null).ToList();

        shared.Select(s => s.Head.Lifter).Should().Equal("ottoline", "bram");
        shared.Should().OnlyContain(s => s.SharedWith == shared.Single(o => o != s).Head.Id && s.Closed);
        var squats = shared.SelectMany(s => s.Sets.Where(x => x.Set is { Slot: "squat", Kind: SetKind.Working }).Select(x => (s.Head.Lifter, x.Set.At))).OrderBy(x => x.At).Select(x => x.Lifter).ToList();
        squats.Should().HaveCount(10);
        squats.Zip(squats.Skip(1)).Count(t => t.First != t.Second).Should().BeGreaterThan(4, "sets of the same lift take turns");
    }

    [Theory]
    [MemberData(nameof(Days))]
    public void Each_small_mishap_comes_once(int day)
    {
        var sessions = Lived.Until(day).Of("ottoline");
        var facts = sessions.SelectMany(s => s.Facts).ToList();

        facts.OfType<ExerciseSwapped>().Should().ContainSingle().Which.Filled.Exercise.Should().Be("goblet-squat");
        facts.OfType<FormTold>().Should().ContainSingle().Which.Slipped.Should().BeTrue();
        facts.OfType<FactStruck>().Should().ContainSingle();
        sessions.Where(s => s.LeftOut.Count > 0).Should().ContainSingle().Which.LeftOut.Should().Contain("core").And.NotContain("overhead-press");
        facts.OfType<RestChanged>().Should().HaveCountGreaterThan(20, "no rest is quite the planned one");
    }

    [Theory]
    [MemberData(nameof(Days))]
    public void Skills_grow_in_totals_and_seconds(int day)
    {
        var lived = Lived.Until(day);
        var skills = lived.Of("ottoline").Where(s => s.Head.Kind == DayKind.Skills).ToList();
        var totals = skills.Select(s => s.Sets.Where(x => x.Set.Kind == SetKind.Share).Sum(x => x.Set.Done)).ToList();
        var holds = skills.SelectMany(s => s.Prescriptions).Where(p => p.Slot == "core-holds").ToList();

        totals.Should().BeInAscendingOrder();
        (totals[0], totals[^1] >= 60).Should().Be((30, true));
        holds.Zip(holds.Skip(1)).Should().OnlyContain(h =>
            h.Second.Targets[0] >= h.First.Targets[0] || h.Second.Why.Code == Reasons.LayOff || h.Second.Why.Code == SkillReasons.NextRung);
    }

    [Theory]
    [MemberData(nameof(Days))]
    public void Nothing_head_down_is_asked_of_ottoline(int day) => Lived.Until(day).Of("ottoline")
        .SelectMany(s => s.Prescriptions).Should().NotContain(p => Lived.Catalogue[p.Exercise].Inverted);

    [Theory]
    [MemberData(nameof(Days))]
    public void Bram_comes_back_after_three_weeks_to_lighter_loads(int day)
    {
        var lived = Lived.Until(day);
        var last = lived.History("bram").Of("back-squat").Last();

        var squat = lived.TodaysPlan("bram").Prescriptions[0];

        Period.DaysBetween(last.Date, lived.Today).Should().BeInRange(21, 28);
        squat.Why.Code.Should().Be(Reasons.LayOff);
        squat.Load!.Value.Should().BeLessThanOrEqualTo(last.Asked.Load!.Value * 0.9m).And.BeGreaterThan(last.Asked.Load!.Value * 0.8m);
        lived.WeighIns("bram").Should().OnlyContain(w => w.Weight.Unit == MassUnit.Pound);
        lived.Of("bram").SelectMany(s => s.Sets).Where(s => s.Set.Load != null).Should().OnlyContain(s => s.Set.Load!.Value.Unit == MassUnit.Kilogram);
    }
}
