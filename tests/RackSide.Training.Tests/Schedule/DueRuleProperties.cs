using CsCheck;
using NodaTime;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

/// <summary>Ten weeks lived by lifters who come or stay away as chance has it.</summary>
public class DueRuleProperties
{
    private static readonly LocalDate Start = new(2026, 11, 2);

    private static readonly Gen<bool[]> Comes = Gen.Bool.Array[70];

    private static readonly IsoDayOfWeek[][] Weekdays =
    [
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday],
        [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday],
        [IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Sunday],
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday],
    ];

    private static readonly Gen<IsoDayOfWeek[]> Patterns = Gen.Int[0, Weekdays.Length - 1].Select(i => Weekdays[i]);

    [Fact]
    public void A_rest_day_follows_every_training_day() => Lives((plan, done) =>
        done.Zip(done.Skip(1)).Should().OnlyContain(p => Period.DaysBetween(p.First.Date, p.Second.Date) > 1));

    [Fact]
    public void Nothing_is_due_the_day_after_an_extra_session() => Gen.Select(Patterns, Gen.Int[0, 69].Array[1, 12]).Sample((days, extras) =>
    {
        var plan = Weeks.Usual.On(days);
        var done = extras.Distinct().Order().Select(i => new DayDone(Start.PlusDays(i), i % 2 == 0 ? "strength" : "skills")).ToList();
        done.Should().OnlyContain(d => DueRule.For(plan, done, d.Date.PlusDays(1)).Kind != DueKind.Train);
    });

    [Fact]
    public void Nothing_missed_is_ever_done_twice() => Comes.Sample(comes =>
    {
        var weeks = Live(Weeks.Usual, comes).GroupBy(d => IsoWeek.Of(d.Date)).ToList();
        weeks.Should().OnlyContain(w => w.Count(d => d.DayKey == "strength") <= 2 && w.Count() <= 3);
    });

    [Fact]
    public void The_next_date_lies_ahead_and_comes_true_for_a_lifter_who_rests_until_then() => Lives((plan, done) =>
    {
        var today = done.Count == 0 ? Start : done[^1].Date;
        var due = DueRule.For(plan, done, today);
        due.Next.Should().BeGreaterThan(today);

        var then = DueRule.For(plan, After(due, done, today), due.Next);
        then.Day.Should().Be(due.NextDay);
    });

    [Fact]
    public void A_lifter_who_always_comes_keeps_the_pattern() => Patterns.Sample(days =>
    {
        var plan = Weeks.Usual.On(days);
        var done = Live(plan, [.. Enumerable.Repeat(true, 70)]);
        done.Skip(1).Should().OnlyContain(d => plan.Week[d.Date.DayOfWeek] == d.DayKey);
    });

    [Fact]
    public void A_long_absence_ends_with_strength() => Gen.Select(Comes, Gen.Int[DueRule.LongAbsenceDays, 90]).Sample((comes, away) =>
    {
        var done = Live(Weeks.Usual, comes);
        if (done.Count > 0)
        {
            DueRule.For(Weeks.Usual, done, done[^1].Date.PlusDays(away)).Day?.Kind.Should().Be(DayKind.Strength);
        }
    });

    private static void Lives(Action<Plan, IReadOnlyList<DayDone>> holds) =>
        Gen.Select(Patterns, Comes).Sample((days, comes) =>
        {
            var plan = Weeks.Usual.On(days);
            holds(plan, Live(plan, comes));
        });

    private static List<DayDone> Live(Plan plan, bool[] comes)
    {
        var done = new List<DayDone>();
        for (var i = 0; i < comes.Length; i++)
        {
            if (comes[i] && DueRule.For(plan, done, Start.PlusDays(i)).Day is { } day)
            {
                done.Add(new DayDone(Start.PlusDays(i), day.Key));
            }
        }

        return done;
    }

    private static IReadOnlyList<DayDone> After(DayDue due, IReadOnlyList<DayDone> done, LocalDate today) =>
        due.Day is { } day ? [.. done, new DayDone(today, day.Key)] : done;
}
