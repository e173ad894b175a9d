using CsCheck;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Planning;

/// <summary>Whatever some weeks at the Tollbooth were like.</summary>
public class PlannerProperties
{
    // How far over or under its target each set goes, on so many days of the plan.
    private static readonly Gen<int[]> Efforts = Gen.OneOf(Gen.Int[-2, 3].Array[8, 40], Gen.Int[0, 3].Array[8, 40]);

    [Fact]
    public void Taking_a_set_back_and_doing_it_again_changes_nothing() => Efforts.Sample(efforts =>
    {
        var history = Lived(efforts);
        var last = history.Sessions[^1];
        var set = last.Facts.OfType<SetDone>().First();
        var again = set with { Id = new FactId("test", 9_999_999) };
        SessionRecord redone = last with { Facts = [.. last.Facts.Select(f => f == set ? again : f), set, new FactStruck(new FactId("test", 9_999_998), set.At, set.Id)] };

        Asked(history).Should().Equal(Asked(new([.. history.Sessions.SkipLast(1), redone])));
    }, iter: 60);

    [Fact]
    public void The_unit_a_lifter_reads_in_never_moves_a_load() => Efforts.Sample(efforts =>
    {
        var history = Lived(efforts);

        Asked(history, Ottoline with { Unit = MassUnit.Pound }).Should().Equal(Asked(history));
    }, iter: 60);

    [Fact]
    public void A_kit_in_another_unit_asks_for_nothing_harder_than_before_after_a_miss() => Gen.Int[20, 100].Sample(amount =>
    {
        var kit = KitDefaults.For(MassUnit.Pound);
        var used = Mass.Kg(amount);
        var past = Session(Today(TrainingHistory.Empty, Monday), Monday, (_, _) => 3);
        var missed = past with { Facts = [.. past.Facts.Select(f => f is SetDone { Slot: "squat" } s ? s with { Load = used } : f)] };

        var next = Planner.Prescribe(StrengthDay.Slots[0], AllExercises["back-squat"], kit, new([missed]), Monday.PlusDays(4));

        next.Load!.Value.Unit.Should().Be(MassUnit.Pound);
        next.Load.Should().Be(Loads.For(AllExercises["back-squat"], kit)!.AtOrBelow(used));
        new TrainingHistory([missed]).Of("back-squat").Single().Sets.Should().OnlyContain(s => s.Set.Load == used);
    }, iter: 60);

    /// <summary>The sequence rule: what is not a strength day performed moves no load.</summary>
    [Fact]
    public void Skills_days_and_days_not_trained_move_no_load() => Efforts.Sample(efforts =>
    {
        var history = Lived(efforts);
        var strengthOnly = new TrainingHistory([.. history.Sessions.Where(s => s.Head.Kind == DayKind.Strength)]);
        var head = history.Sessions[^1].Head;
        var left = new SessionRecord(head with { Id = new FactId("test", 8_888_888), Date = head.Date.PlusDays(1) }, []);

        Asked(strengthOnly, on: head.Date.PlusDays(3)).Should().Equal(Asked(history, on: head.Date.PlusDays(3)));
        Asked(new([.. history.Sessions, left]), on: head.Date.PlusDays(3)).Should().Equal(Asked(history, on: head.Date.PlusDays(3)));
    }, iter: 60);

    private static TrainingHistory Lived(int[] efforts) => Enumerable.Range(0, efforts.Length).Aggregate(
        TrainingHistory.Empty,
        (history, day) => Live(history, Monday.PlusDays(day), (p, i) => Math.Max(0, p.Targets[i] + efforts[(day + i) % efforts.Length])));

    private static IEnumerable<string> Asked(TrainingHistory history, Lifter? lifter = null, LocalDate? on = null) =>
        Planner.Prescriptions(StrengthDay, AllExercises, Garage, lifter ?? Ottoline, history, on ?? history.Sessions[^1].Head.Date.PlusDays(3))
            .Select(p => $"{p.Exercise} {p.Load} {string.Join(' ', p.Targets)} {p.Why.Line} {p.Why.Advice}");
}
