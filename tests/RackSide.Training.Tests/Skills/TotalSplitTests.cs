using CsCheck;
using RackSide.Training.Skills;

namespace RackSide.Training.Tests.Skills;

/// <summary>The split of a total, held against a simulated lifter whose reps decay from set to set.</summary>
public class TotalSplitTests
{
    private static readonly Gen<(int Most, double Cost, double Kept, double Bend, int Total)> Lifters = Gen.Select(
        Gen.Int[6, 50], Gen.Double[0.4, 0.8], Gen.Double[0.4, 0.6], Gen.Double[2, 4], Gen.Int[30, 150],
        (most, cost, kept, bend, total) => (most, cost, kept, bend, total));

    /// <summary>Lifters by how their reps decay when they go to the limit: from 100, the next five sets.</summary>
    public static TheoryData<double, double, int[]> Decays => new()
    {
        { 0.45, 0.6, [73, 56, 47, 41, 37] },
        { 0.5, 0.5, [75, 62, 56, 53, 51] },
        { 0.5, 0.6, [70, 52, 41, 34, 30] },
        { 0.6, 0.45, [73, 60, 55, 52, 51] },
        { 0.6, 0.5, [70, 55, 47, 43, 41] },
        { 0.7, 0.5, [65, 47, 38, 34, 32] },
        { 0.8, 0.4, [68, 55, 50, 48, 47] },
    };

    [Theory]
    [MemberData(nameof(Decays))]
    public void The_suggested_split_takes_no_more_sets_than_going_to_the_limit_every_time(double cost, double kept, int[] decay)
    {
        var tried = new DecayingLifter(100, cost, kept, 4);
        tried.Try(int.MaxValue).Should().Be(100);
        decay.Should().Equal(decay.Select(_ => tried.Try(int.MaxValue)));

        var days = Enumerable.Range(10, 31).SelectMany(most => new[] { 50, 60, 75, 80, 100 }.Select(total => (most, cost, kept, 4.0, total))).ToList();
        days.Where(d => Suggested(d, d.most).Count > ToTheLimit(d)).Should().BeEmpty();
        days.Count(d => Suggested(d, d.most).Count < ToTheLimit(d)).Should().BeGreaterThan(days.Count / 4, "many days take fewer");
    }

    [Fact]
    public void Whoever_is_tired_by_every_set_alike_needs_at_most_one_set_more_and_that_seldom()
    {
        var (all, more) = (0, 0);
        Lifters.Sample(
            l =>
            {
                if (!TiresAsAssumed(l.Most, l.Cost, l.Kept, l.Bend))
                {
                    return true;
                }

                var over = Suggested(l, l.Most).Count - ToTheLimit(l);
                all++;
                more += over > 0 ? 1 : 0;
                return over <= 1;
            },
            iter: 4000,
            threads: 1);

        all.Should().BeGreaterThan(500);
        (more * 100.0 / all).Should().BeLessThan(6);
    }

    [Fact]
    public void It_never_asks_for_more_than_the_best_set_or_than_is_left() => Lifters.Sample(l =>
    {
        var left = l.Total;
        return Suggested(l, l.Most).All(s =>
        {
            var fits = s.Asked >= 1 && s.Asked <= l.Most && s.Asked <= left;
            left -= s.Done;
            return fits;
        });
    });

    [Fact]
    public void A_best_set_that_is_out_of_reach_today_still_comes_to_an_end() =>
        Lifters.Sample(l => Suggested(l, l.Most * 2).Sum(s => s.Done) == l.Total);

    [Theory]
    [InlineData(100, 20, 15)]
    [InlineData(100, 35, 28)]
    [InlineData(40, 12, 10)]
    [InlineData(25, 20, 14)]
    [InlineData(20, 20, 20)]
    [InlineData(100, 5, 4)]
    public void The_first_set_leaves_reps_in_reserve(int total, int best, int first) => TotalSplit.Next(total, best, []).Should().Be(first);

    [Fact]
    public void A_set_that_fell_short_is_not_asked_for_again_and_one_that_slipped_gives_one_back()
    {
        TotalSplit.Next(100, 20, [new(13, 13), new(13, 9)]).Should().Be(9);
        TotalSplit.Next(100, 20, [new(13, 13, Slipped: true)]).Should().Be(12);
        TotalSplit.Next(100, 20, [new(13, 9), new(9, 15)]).Should().BeLessThanOrEqualTo(15).And.BeGreaterThan(9);
    }

    [Fact]
    public void Where_no_set_is_known_it_begins_small_and_asks_for_the_same_again()
    {
        TotalSplit.Next(100, null, []).Should().Be(TotalSplit.FirstShare);
        TotalSplit.Next(100, null, [new(10, 12)]).Should().Be(12);
        TotalSplit.Next(100, null, [new(10, 6)]).Should().Be(6);
        TotalSplit.Next(100, null, [new(10, 95)]).Should().Be(5);
    }

    private static List<ShareDone> Suggested((int Most, double Cost, double Kept, double Bend, int Total) l, int best)
    {
        var lifter = new DecayingLifter(l.Most, l.Cost, l.Kept, l.Bend);
        List<ShareDone> done = [];
        while (done.Sum(s => s.Done) < l.Total)
        {
            var asked = TotalSplit.Next(l.Total, best, done);
            done.Add(new ShareDone(asked, lifter.Try(asked)));
        }

        return done;
    }

    private static int ToTheLimit((int Most, double Cost, double Kept, double Bend, int Total) l)
    {
        var lifter = new DecayingLifter(l.Most, l.Cost, l.Kept, l.Bend);
        var (left, sets) = (l.Total, 0);
        for (; left > 0; sets++)
        {
            left -= lifter.Try(left);
        }

        return sets;
    }

    /// <summary>Whether going to the limit tires at least as the split assumes, and leaves a third of the best set in the end.</summary>
    private static bool TiresAsAssumed(int most, double cost, double kept, double bend)
    {
        var lifter = new DecayingLifter(most, cost, kept, bend);
        var sets = Enumerable.Range(0, 20).Select(_ => lifter.Try(int.MaxValue)).ToList();
        return sets[1] <= most * 0.8 && sets[2] <= most * 0.65 && sets.Skip(3).All(s => s <= most * 0.6) && sets[^1] >= most * 0.3;
    }
}
