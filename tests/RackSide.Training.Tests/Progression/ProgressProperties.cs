using CsCheck;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using static RackSide.Training.Tests.Progression.Lifting;

namespace RackSide.Training.Tests.Progression;

/// <summary>Whatever was done, at whatever load and after whatever gap.</summary>
public class ProgressProperties
{
    private const int RepsOfferedFirst = 2;

    private static readonly LocalDate Start = new(2026, 11, 2);

    private static readonly (Exercise Exercise, Scheme Scheme)[] Kinds =
    [
        (Squat, Fives), (Squat, SixToTwelve), (Curl, SixToTwelve), (HelpedChin, SixToTwelve), (ChinUp, Fives),
    ];

    private static readonly Gen<(int Reps, int Load, bool Slipped)> Sets =
        Gen.Select(Gen.Int[0, 14], Gen.Int[0, 60], Gen.Int[0, 9].Select(i => i == 0));

    // Strong days, with every set at the top and one load, would hardly ever come by chance.
    private static readonly Gen<(int Reps, int Load, bool Slipped)[]> StrongDays =
        Gen.Int[0, 60].Select(load => Enumerable.Repeat((12, load, false), 5).ToArray());

    private static readonly Gen<((int Reps, int Load, bool Slipped)[] Sets, bool OneLoad, int Gap)> Days =
        Gen.Select(Gen.OneOf(Sets.Array[1, 5], StrongDays), Gen.Bool, Gen.OneOf(Gen.Int[2, 7], Gen.Int[1, 70]));

    private static readonly Gen<(int Kind, ((int Reps, int Load, bool Slipped)[] Sets, bool OneLoad, int Gap)[] Days)> Pasts =
        Gen.Select(Gen.Int[0, Kinds.Length - 1], Days.Array[1, 6]);

    [Fact]
    public void Every_load_can_be_loaded_and_every_target_is_within_the_scheme() => Each((slot, exercise, past, loads, next) =>
    {
        loads.All.Should().Contain(next.Load!.Value);
        next.Targets.Count.Should().BeOneOf(slot.Scheme.Sets, (slot.Scheme.Sets + 1) / 2);
        next.Targets.Should().OnlyContain(t => t >= 5 && t <= 12);
    });

    [Fact]
    public void After_a_miss_nothing_is_harder() => Each((slot, exercise, past, loads, next) =>
    {
        var last = past[^1];
        var floor = slot.Scheme is Scheme.Range r ? r.Low : 5;
        if (last.Sets.All(s => s.Set.Done < floor))
        {
            var used = last.Sets.Select(s => s.Set.Load!.Value);
            (exercise.LoadType == LoadType.Assisted ? next.Load >= used.Min() : next.Load <= used.Max()).Should().BeTrue();
        }
    });

    [Fact]
    public void A_step_goes_up_by_no_more_than_the_plates_force() => Each((slot, exercise, past, loads, next) =>
    {
        var used = past[past.Count - 1].Sets.Select(s => s.Set.Load!.Value).Distinct().ToList();
        if (next.Why.Code is Reasons.AllMet or Reasons.TopOfRange && exercise == Squat && used.Count == 1)
        {
            var needed = used[0] + StepSizes.For(exercise, MassUnit.Kilogram);
            loads.All.Where(l => l >= needed).DefaultIfEmpty(loads.Heaviest).First().Should().Be(next.Load!.Value);
        }
    });

    /// <summary>The ceiling of one step, ACSM 2009, MSSE 41(3):687-708: 2 to 10 per cent (seen).</summary>
    [Fact]
    public void A_step_over_ten_per_cent_comes_only_after_more_reps_and_is_named() => Each((slot, exercise, past, loads, next) =>
    {
        var used = LoadUsed.Of(past[^1], exercise)!.Value;
        if (exercise == Squat || exercise == Curl)
        {
            var isBig = next.Load!.Value.Amount > used.Amount * 1.1m;
            next.Why.Line.Contains("a big step", StringComparison.Ordinal).Should().Be(isBig);
            var enough = slot.Scheme is Scheme.Range ? 12 : 5 + RepsOfferedFirst;
            past[^1].Sets.Where(s => isBig && s.Set.Load == used).All(s => s.Set.Done >= enough).Should().BeTrue();
        }
    });

    [Fact]
    public void No_more_is_asked_of_a_sore_motion_than_without_it() => Each((slot, exercise, past, loads, next) =>
    {
        var today = past[^1].Date.PlusDays(3);
        var sore = new Meanwhile { Sore = new SoreTold(new FactId("test", 99), Instant.MinValue, past[^1].Date, exercise.Motion) };

        var spared = Progress.Next(slot, exercise, past, loads, today, sore);

        LoadUsed.IsHarder(spared.Load, Progress.Next(slot, exercise, past, loads, today).Load, exercise).Should().BeFalse();
        LoadUsed.IsHarder(spared.Load, LoadUsed.Of(past[^1], exercise), exercise).Should().BeFalse();
        spared.Why.Advice.Should().StartWith(Sparing.Caution);
    });

    [Fact]
    public void Whatever_was_loaded_the_numbers_behind_a_decision_are_told_with_it() => Each((slot, exercise, past, loads, next) =>
    {
        var told = next.Why.Inputs.ToDictionary(i => i.Name, i => i.Amount);

        told["to"].Should().Be(next.Load!.Value.Amount);
        told["fewest"].Should().Be(past[^1].Sets.Min(s => s.Set.Done));
        told.GetValueOrDefault("misses").Should().Be(Progress.MissesInARow(exercise, past));
    });

    [Fact]
    public void Every_decision_says_why_in_one_plain_sentence() => Each((slot, exercise, past, loads, next) =>
    {
        next.Why.Line.Should().NotBeNullOrWhiteSpace();
        next.Why.Line.Length.Should().BeLessThanOrEqualTo(100);
        next.Why.Code.Should().MatchRegex("^[a-z]+(-[a-z]+)*$");
    });

    private static void Each(Action<Slot, Exercise, IReadOnlyList<Performance>, ReachableLoads, Decision> holds) =>
        Pasts.Sample((kind, days) =>
        {
            var (exercise, scheme) = Kinds[kind];
            var slot = Slot(exercise, scheme);
            var loads = Loads.For(exercise, Garage)!;
            var date = Start;
            var past = new List<Performance>();
            foreach (var (sets, oneLoad, gap) in days)
            {
                past.Add(Day(slot, exercise, loads, date, [.. sets.Select(s => oneLoad ? s with { Load = sets[0].Load } : s)]));
                date = date.PlusDays(gap);
            }

            holds(slot, exercise, past, loads, Progress.Next(slot, exercise, past, loads, date));
        }, iter: 2000);

    private static Performance Day(
        Slot slot, Exercise exercise, ReachableLoads loads, LocalDate date, IReadOnlyList<(int Reps, int Load, bool Slipped)> sets)
    {
        var target = slot.Scheme is Scheme.Range ? 6 : 5;
        var asked = new Prescription
        {
            Slot = slot.Key,
            Motion = slot.Motion,
            Exercise = exercise.Id,
            Scheme = slot.Scheme,
            Targets = [.. Enumerable.Repeat(target, slot.Scheme.Sets)],
            Load = loads.All[sets[0].Load % loads.All.Count],
            Rest = slot.Rest,
            Why = new Reason("test", "test"),
        };
        return new Performance(date, asked, [.. sets.Select((s, i) => One(exercise, loads, i, target, s))], false);
    }

    private static SetResult One(
        Exercise exercise, ReachableLoads loads, int index, int target, (int Reps, int Load, bool Slipped) set) => new(
        new SetDone(
            new FactId("test", index + 1), Instant.MinValue, exercise.Id, exercise.Id, SetKind.Working, index + 1, target, set.Reps,
            loads.All[set.Load % loads.All.Count]),
        set.Slipped);
}
