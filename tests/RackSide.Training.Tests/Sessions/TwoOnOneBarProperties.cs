using CsCheck;
using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

/// <summary>Whole sessions of two lifters, at any pair of loads, on a kit of kilograms and one that has pound plates too.</summary>
public sealed class TwoOnOneBarProperties
{
    private static readonly Gen<(decimal One, decimal Two, bool Pounds)> Pairs =
        Gen.Select(Gen.Int[8, 40], Gen.Int[8, 40], Gen.Bool, (one, two, pounds) => (one * 2.5m, two * 2.5m, pounds));

    [Fact]
    public void Nobody_rests_less_than_planned_and_both_logs_are_complete() => Pairs.Sample(
        p =>
        {
            var pair = Whole(p);

            foreach (var session in pair.Both.Both)
            {
                var place = session.Place;
                place.Agenda.OfType<SetItem>().Should().OnlyContain(i => place.IsPast(i));
                place.Sets.Should().HaveCount(place.Agenda.OfType<SetItem>().Count());
                session.Record.Closed.Should().BeTrue();
                foreach (var (before, after) in place.Sets.Zip(place.Sets.Skip(1)))
                {
                    (after.Set.At - before.Set.At).Should().BeGreaterThanOrEqualTo(Rests.Between(Item(place, before.Set), Item(place, after.Set)));
                }
            }

            pair.Both.Both.SelectMany(s => s.Facts).Select(f => f.Id).Should().OnlyHaveUniqueItems();
        },
        iter: 5);

    [Fact]
    public void The_bar_holds_what_each_set_asks_for_and_the_words_replayed_give_its_stacks() => Pairs.Sample(
        p => Replay(p, (onBar, change, needed, load) =>
        {
            needed.Total.Kilograms.Should().Be(load.Kilograms);
            onBar.Take(onBar.Count - change.TakeOff.Count).Concat(change.PutOn).Should().Equal(needed.Side);
            onBar.TakeLast(change.TakeOff.Count).Reverse().Should().Equal(change.TakeOff);
        }),
        iter: 5);

    [Fact]
    public void No_more_plates_are_handled_than_in_strict_turns() => Pairs.Sample(
        p =>
        {
            var start = Pair.Strength(p.One, p.Two, Kit(p.Pounds)).Check().Both;
            Mass[][] both = [.. start.Both.Select(s => s.Place.Agenda.OfType<SetItem>().Where(i => i.Slot == "squat").Select(i => i.Load!.Value).ToArray())];
            var strict = Enumerable.Range(0, Math.Max(both[0].Length, both[1].Length))
                .SelectMany(i => both.Where(b => i < b.Length).Select(b => LoadBand.Exactly(b[i])));
            var least = FewestPlates.For(new PlateJob { Bar = Mass.Kg(20), Plates = start.InTurn.Setting.Kit.Plates, Sets = [.. strict] })!.Handled;

            Handled(p).Should().BeLessThanOrEqualTo(least);
        },
        iter: 12);

    private static SetItem Item(Place place, SetDone set) =>
        place.Agenda.OfType<SetItem>().Single(i => i.Slot == set.Slot && i.Kind == set.Kind && i.Number == set.Number);

    /// <summary>The plates handled on a side from the bare bar to the bar stripped after both have squatted.</summary>
    private static int Handled((decimal One, decimal Two, bool Pounds) p)
    {
        var handled = 0;
        var left = Replay(p, (_, change, _, _) => handled += change.TakeOff.Count + change.PutOn.Count, "squat");
        return handled + left;
    }

    private static int Replay((decimal One, decimal Two, bool Pounds) p, Action<IReadOnlyList<Mass>, PlateChange, BarStack, Mass> look, string? only = null)
    {
        var pair = Pair.Strength(p.One, p.Two, Kit(p.Pounds)).Check();
        IReadOnlyList<Mass> onBar = [];
        while (!pair.Both.Alone && (only is null || pair.Both.Both.Any(s => s.Place.Current is SetItem i && i.Slot == only)))
        {
            var (s, count) = (pair.Both.InTurn, pair.Sets.Count);
            if (s.Phase is Lifting && s.Place.Current is SetItem item && s.Setting.Catalogue[item.Asked.Exercise].LoadType == LoadType.Barbell)
            {
                var load = SetInHand.AskedLoad(s)!.Value;
                var needed = BarInHand.For(s, load)!;
                look(onBar, BarInHand.Change(s, load)!, needed, load);
                onBar = needed.Side;
            }

            pair.Forward();
        }

        return onBar.Count;
    }

    private static Pair Whole((decimal One, decimal Two, bool Pounds) p) =>
        Pair.Strength(p.One, p.Two, Kit(p.Pounds)).Check().To(b => b.Gone.All(gone => gone));

    private static GymKit Kit(bool pounds) => TollboothDay.Kit with
    {
        Plates = [.. TollboothDay.Kit.Plates, .. pounds ? [new PlatePairs(Mass.Lb(10), 1), new PlatePairs(Mass.Lb(5), 1)] : Array.Empty<PlatePairs>()],
    };
}
