using CsCheck;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Strength;
using static RackSide.Training.Tests.Progression.Lifting;

namespace RackSide.Training.Tests.Progression;

/// <summary>Whatever is told after whatever set, honest or not.</summary>
public class LoadSearchProperties
{
    private static readonly Exercise Bench = Of("bench-press", Motion.HorizontalPush, LoadType.Barbell);

    private static readonly (Exercise Exercise, Scheme Scheme)[] Kinds = [(Squat, Fives), (Bench, SixToTwelve), (Press, SixToTwelve), (Curl, SixToTwelve), (HelpedChin, SixToTwelve)];

    private static readonly Gen<(int Done, int Left, bool Slipped)[]> Answers =
        Gen.Select(Gen.Int[0, 9], Gen.OneOf(Gen.Int[0, 12], Gen.Int[0, 99]), Gen.Int[0, 9]).Select(t => (t.Item1 < 2 ? t.Item1 : 8, t.Item2, t.Item3 == 0)).Array[12];

    [Fact]
    public void It_always_ends_after_five_sets_at_most() => Each((span, loads, sets, found) =>
        sets.Count.Should().BeInRange(1, LoadSearch.MostTries));

    [Fact]
    public void Nothing_is_asked_for_that_the_kit_cannot_load() => Each((span, loads, sets, found) =>
        sets.Select(s => s.Load).Append(found.Load).Should().OnlyContain(l => loads.Has(l)));

    [Fact]
    public void No_try_goes_more_than_one_step_beyond_the_last_that_was_easy() => Each((span, loads, sets, found) =>
    {
        foreach (var (last, next) in sets.Zip(sets.Skip(1)).Where(p => span.IsHarder(p.Second.Load, p.First.Load)))
        {
            last.Short.Should().BeFalse();
            last.Left.Should().BeGreaterThanOrEqualTo(LoadSearch.Easy);
            if (span.MostAtOnce is { } most)
            {
                (next.Load - last.Load).Should().BeLessThanOrEqualTo(most);
                next.Load.Amount.Should().BeLessThanOrEqualTo(last.Load.Amount * (1 + (0.02m * last.Left!.Value)));
            }
            else
            {
                loads.All.Count(l => span.IsHarder(l, last.Load) && !span.IsHarder(l, next.Load)).Should().Be(1);
            }
        }
    });

    [Fact]
    public void What_is_found_was_lifted_with_enough_left_or_is_easier_than_all_that_was_lifted() => Each((span, loads, sets, found) =>
    {
        var good = sets.Where(s => !s.Short && s.Left >= LoadSearch.Enough).ToList();
        (good.Any(s => s.Load == found.Load) || sets.All(s => !span.IsHarder(found.Load, s.Load))).Should().BeTrue();
        found.Why.Line.Length.Should().BeLessThanOrEqualTo(76, "a why-line fits beside its word");
    });

    [Fact]
    public void Nothing_as_hard_as_a_load_that_was_too_much_is_tried_again() => Each((span, loads, sets, found) =>
    {
        for (var i = 0; i < sets.Count; i++)
        {
            if (sets[i].Short || sets[i].Left < LoadSearch.Enough)
            {
                sets.Skip(i + 1).All(s => span.IsHarder(sets[i].Load, s.Load)).Should().BeTrue();
            }
        }
    });

    /// <summary>Epley 1985, Poundage chart: reps at a load are 30 (1RM / load - 1), formula seen in second-hand copies.</summary>
    [Fact]
    public void A_lifter_who_counts_truly_never_comes_to_the_last_rep_on_a_bar() =>
        Gen.Select(Gen.Int[0, 2], Gen.Double[26, 200]).Sample((kind, maximum) =>
        {
            var (span, _) = SpanOf(kind);
            List<SearchSet> sets = [];
            while (LoadSearch.Next(span, sets) is SearchStep.Try next)
            {
                var able = (int)Math.Floor(30 * ((maximum / (double)next.Load.Kilograms) - 1));
                if (sets.Count > 0)
                {
                    able.Should().BeGreaterThan(span.Reps, $"{next.Load} follows {sets[^1]}");
                    OneRepMaximum.By(RepFormula.Epley, next.Load, 1)!.Value.Should().BeLessThan(Mass.Kg((decimal)maximum));
                }

                sets.Add(new SearchSet(next.Load, span.Reps, Math.Clamp(able, 0, span.Reps), Math.Max(0, able - span.Reps)));
            }
        }, iter: 5000, seed: "0000RackSide4");

    private static (SearchSpan Span, ReachableLoads Loads) SpanOf(int kind)
    {
        var (exercise, scheme) = Kinds[kind];
        var loads = Loads.For(exercise, Garage)!;
        return (LoadSearchTests.Span(exercise, scheme, loads)!, loads);
    }

    private static void Each(Action<SearchSpan, ReachableLoads, IReadOnlyList<SearchSet>, SearchStep.Found> holds) =>
        Gen.Select(Gen.Int[0, Kinds.Length - 1], Answers).Sample((kind, answers) =>
        {
            var (span, loads) = SpanOf(kind);
            List<SearchSet> sets = [];
            SearchStep step;
            while ((step = LoadSearch.Next(span, sets)) is SearchStep.Try next && sets.Count < answers.Length)
            {
                var (done, left, slipped) = answers[sets.Count];
                sets.Add(new SearchSet(next.Load, span.Reps, done, left, slipped));
            }

            holds(span, loads, sets, step.Should().BeOfType<SearchStep.Found>().Subject);
        }, iter: 3000);
}
