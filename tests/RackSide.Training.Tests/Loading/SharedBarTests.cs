using CsCheck;
using NodaTime;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>Two lifters on one bar; orders worked out by hand, and all orders tried on small gyms.</summary>
public class SharedBarTests
{
    private static readonly Duration None = Duration.Zero;

    private static readonly Duration Full = Duration.FromSeconds(120);

    private static readonly PlateJob Garage = new()
    {
        Bar = Mass.Kg(20),
        Plates = [new(Mass.Kg(20), 2), new(Mass.Kg(10), 1), new(Mass.Kg(5), 1), new(Mass.Kg(2.5m), 1)],
        Sets = [],
    };

    [Fact]
    public void Working_sets_are_done_in_turn()
    {
        var order = Order(Lifter("Ottoline", Full, 60, 60, 60), Lifter("Bram", Full, 65, 65, 65));

        Text(order).Should().Be("O60 B65 O60 B65 O60 B65");
        order.Why.Should().Be("in turn: no other order spares a plate");
    }

    [Fact]
    public void Ramp_sets_go_twice_in_a_row_where_that_spares_plates()
    {
        // In turn, 5 | 20 | 5+2.5 | 20 puts five plates on; 5 | 5+2.5 | 20 | 20 three.
        var order = Order(Lifter("Ottoline", None, 30, 35), Lifter("Bram", None, 60, 60));

        Text(order).Should().Be("O30 O35 B60 B60");
        order.Why.Should().Be("Ottoline goes twice in a row: 4 plates fewer to handle on each side, and no rest is cut short");
    }

    [Fact]
    public void A_rest_that_is_not_over_keeps_them_in_turn() =>
        Text(Order(Lifter("Ottoline", Full, 30, 35), Lifter("Bram", Full, 60, 60))).Should().Be("O30 B60 O35 B60");

    [Fact]
    public void The_other_begins_where_that_spares_plates()
    {
        // 20 | 20+5 | 20+5 puts two plates on; 20+5 | 20 | 20+5 puts the 5 on twice.
        var order = Order(Lifter("Ottoline", Full, 70), Lifter("Bram", Full, 60, 70));

        Text(order).Should().Be("B60 O70 B70");
        order.Why.Should().Be("Bram begins: 2 plates fewer to handle on each side");
    }

    [Fact]
    public void A_set_in_hand_is_not_taken_away() =>
        Text(SharedBar.Order(Garage, Lifter("Ottoline", Full, 70), Lifter("Bram", Full, 60, 70), mayBegin: false)!)
            .Should().StartWith("O70");

    [Fact]
    public void One_who_has_just_gone_twice_in_a_row_waits_for_the_other()
    {
        Text(After(run: 1)).Should().Be("B35 O60 O60", "one more ramp set spares plates");
        After(run: 1).Why.Should().Be("Bram goes twice in a row: 4 plates fewer to handle on each side, and no rest is cut short");
        Text(After(run: 2)).Should().StartWith("O60");
        Text(SharedBar.Order(Garage with { Start = [Mass.Kg(5)] }, Lifter("Ottoline", Full, 60, 60), Lifter("Bram", Full, 35), run: 1)!)
            .Should().StartWith("O60", "the rest between two working sets is not over");

        static TurnOrder After(int run) =>
            SharedBar.Order(Garage with { Start = [Mass.Kg(5)] }, Lifter("Ottoline", None, 60, 60), Lifter("Bram", None, 35), run: run)!;
    }

    [Fact]
    public void One_who_leaves_leaves_the_bar_to_the_other()
    {
        var order = Order(Lifter("Ottoline", Full), Lifter("Bram", Full, 60, 65));

        Text(order).Should().Be("B60 B65");
        order.Why.Should().Be("Ottoline has no set to do");
    }

    [Fact]
    public void Each_is_loaded_in_the_own_unit_from_the_plates_of_both()
    {
        var gym = Garage with { Plates = [new(Mass.Kg(20), 1), new(Mass.Lb(10), 1)] };
        var bram = new BarUser("Bram", [new(new(Mass.Lb(66), Mass.Lb(64), Mass.Lb(68)), Full)]);

        var order = SharedBar.Order(gym, Lifter("Ottoline", Full, 60), bram)!;

        order.Plan.Stacks.Should().BeEquivalentTo(new[] { new[] { Mass.Kg(20) }, [Mass.Lb(10)] }, o => o.WithStrictOrdering());
    }

    [Fact]
    public void Nothing_to_do_and_nothing_to_load_give_no_order()
    {
        SharedBar.Order(Garage, Lifter("Ottoline", Full), Lifter("Bram", Full)).Should().BeNull();
        SharedBar.Order(Garage, Lifter("Ottoline", Full, 61), Lifter("Bram", Full, 60)).Should().BeNull();
    }

    [Fact]
    public void No_order_within_the_rule_handles_fewer_plates() =>
        Gen.Select(Loads, Loads, Gen.Bool.Array[4], Gen.Bool.Array[4]).Sample(
            (one, two, long1, long2) =>
            {
                BarUser[] both = [Lifter("Ottoline", one, long1), Lifter("Bram", two, long2)];

                var order = SharedBar.Order(Garage, both[0], both[1])!;

                var kept = EveryOrder(one.Length, two.Length).Where(o => KeepsToTheRule(o, both)).ToList();
                kept.Should().ContainEquivalentOf(order.Turns.Select(t => t.Lifter), o => o.WithStrictOrdering());
                order.Plan.Handled.Should().Be(kept.Min(o => SlowPlans.Cost(Garage with { Sets = Bands(o, both) })!.Value.Handled));
                order.Turns.Where(t => t.Lifter == 0).Select(t => t.Set).Should().Equal(Enumerable.Range(0, one.Length));
                order.Turns.Where(t => t.Lifter == 1).Select(t => t.Set).Should().Equal(Enumerable.Range(0, two.Length));
            },
            iter: 60);

    [Fact]
    public void A_loaded_bar_and_one_left_loaded_are_counted_as_for_one_order() =>
        Gen.Select(Loads, Loads, Gen.Bool.Array[4], Gen.Bool.Array[4], Gen.Bool, Gen.Int[0, 2]).Sample(
            (one, two, long1, long2, stripped, run) =>
            {
                BarUser[] both = [Lifter("Ottoline", one, long1), Lifter("Bram", two, long2)];
                var gym = Garage with { Start = [Mass.Kg(10), Mass.Kg(2.5m)], StrippedAtEnd = stripped };

                var order = SharedBar.Order(gym, both[0], both[1], run: run)!;

                var kept = EveryOrder(one.Length, two.Length).Where(o => KeepsToTheRule([.. Enumerable.Repeat(1, run), .. o], both, run)).ToList();
                kept.Should().ContainEquivalentOf(order.Turns.Select(t => t.Lifter), o => o.WithStrictOrdering());
                order.Plan.Handled.Should().Be(kept.Min(o => FewestPlates.For(gym with { Sets = Bands(o, both) })!.Handled));
            },
            iter: 60);

    private static Gen<decimal[]> Loads { get; } = Gen.OneOf(20m, 25m, 30m, 40m, 45m, 50m, 60m, 65m, 70m).Array[1, 4];

    private static IEnumerable<int[]> EveryOrder(int ones, int twos) =>
        from bits in Enumerable.Range(0, 1 << (ones + twos))
        let order = Enumerable.Range(0, ones + twos).Select(i => (bits >> i) & 1).ToArray()
        where order.Sum() == twos
        select order;

    /// <summary>Again while the other waits: only once, and only after a short rest.</summary>
    private static bool KeepsToTheRule(int[] order, BarUser[] both, int before = 0)
    {
        for (var i = Math.Max(1, before); i < order.Length; i++)
        {
            var (me, set) = (order[i], order.Take(i).Skip(before).Count(l => l == order[i]));
            var otherWaits = order.Skip(i).Contains(1 - me);
            if (otherWaits && order[i - 1] == me && ((i > 1 && order[i - 2] == me) || both[me].Sets[set].RestBefore > Duration.FromSeconds(60)))
            {
                return false;
            }
        }

        return true;
    }

    private static LoadBand[] Bands(int[] order, BarUser[] both) =>
        [.. order.Select((lifter, i) => both[lifter].Sets[order.Take(i).Count(l => l == lifter)].Band)];

    private static TurnOrder Order(BarUser first, BarUser second) => SharedBar.Order(Garage, first, second)!;

    private static BarUser Lifter(string name, Duration rest, params decimal[] loads) =>
        new(name, [.. loads.Select(l => new SharedSet(LoadBand.Exactly(Mass.Kg(l)), rest))]);

    private static BarUser Lifter(string name, decimal[] loads, bool[] restsLong) =>
        new(name, [.. loads.Select((l, i) => new SharedSet(LoadBand.Exactly(Mass.Kg(l)), restsLong[i] ? Full : None))]);

    private static string Text(TurnOrder order) => string.Join(
        ' ', order.Turns.Zip(order.Plan.Stacks, (t, s) => $"{(t.Lifter == 0 ? "O" : "B")}{PlanChecks.Load(Garage, s):0.#}"));
}
