using CsCheck;
using NodaTime;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

/// <summary>
/// Two years of lifters who come, stay away, train extra and go on holiday as chance has it, on weekdays and rolling.
/// Common practice, no source, but for the rest between (NSCA, from memory).
/// </summary>
public class TwoYearsProperties
{
    private const int Days = 730;

    private static readonly LocalDate Start = new(2026, 1, 5);

    private static readonly Plan[] Plans =
    [
        Weeks.Usual,
        Weeks.Usual.On([IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday]),
        Weeks.Usual.On([IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Sunday]),
        Weeks.Usual.On([IsoDayOfWeek.Monday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday]),
        Weeks.Usual.AsRolling(),
    ];

    /// <summary>Of a hundred days, on how many it comes to what: from lifters who are always there to such as never are.</summary>
    private static readonly Gen<Life> Lives =
        from plan in Gen.Int[0, Plans.Length - 1].Select(i => Plans[i])
        from missed in Gen.Int[0, 60]
        from extra in Gen.Int[0, 10]
        from away in Gen.Int[0, 3]
        from chances in Gen.Int[0, 99].Array[Days]
        from lengths in Gen.Int[1, 40].Array[Days]
        select Live(plan, [.. chances.Select(c => c < away ? Day.Leaves : c < away + extra ? Day.Extra : c < away + extra + missed ? Day.Misses : Day.Comes)], lengths);

    private enum Day
    {
        Comes,
        Misses,
        Extra,
        Leaves,
    }

    [Fact]
    public void A_rest_day_lies_between_whatever_is_due_and_whatever_was_done() => Holds(life =>
        life.Offers.Where(o => o.Due.Day is not null).Should().OnlyContain(o =>
            o.Past.All(d => d.Date < o.Date.PlusDays(-1))));

    [Fact]
    public void No_day_away_is_ever_due_or_told_as_missed() => Holds(life =>
        life.Offers.Should().NotContain(o => life.Away.Exists(a => a.Holds(o.Date))
            && (o.Due.Kind == DueKind.Train || o.Due.Kind == DueKind.Rest || o.Due.Why.Contains("missed", StringComparison.Ordinal))));

    [Fact]
    public void Strength_always_lies_between_two_skills_days_that_were_due() => Holds(life =>
    {
        var strengthSince = true;
        foreach (var (day, extra) in life.Done)
        {
            (day.DayKey == "strength" || extra || strengthSince).Should().BeTrue($"of {life.Around(day.Date)}");
            strengthSince = day.DayKey == "strength" || (extra && strengthSince);
        }
    });

    [Fact]
    public void No_strength_day_follows_another_on_the_next_date_and_none_is_offered_for_an_extra_then() => Holds(life =>
        life.Done.Zip(life.Done.Skip(1)).Should().OnlyContain(p =>
            p.First.Day.DayKey != "strength" || p.Second.Day.DayKey != "strength" || Period.DaysBetween(p.First.Day.Date, p.Second.Day.Date) > 1));

    [Fact]
    public void The_next_date_never_lies_in_the_past_nor_in_days_known_to_be_away() => Holds(life =>
        life.Offers.Should().OnlyContain(o => o.Due.Next > o.Date && !o.Away.Any(a => a.Holds(o.Due.Next))));

    [Fact]
    public void Nothing_is_lost_for_a_lifter_who_is_there_a_strength_day_is_never_more_than_four_dates_off() => Holds(life =>
        life.Offers.Where(o => !o.Away.Any(a => a.Holds(o.Date))).Should().OnlyContain(o =>
            Period.DaysBetween(o.Date, DueRule.NextStrength(life.Plan, o.Past, o.Date, o.Away)!.Value.Date) <= DueRule.StrengthApart));

    [Fact]
    public void Nothing_is_doubled_no_seven_days_hold_more_than_four_sessions_that_were_due_or_three_of_strength() => Holds(life =>
    {
        var due = life.Done.Where(d => !d.Extra).Select(d => d.Day).ToList();
        foreach (var first in due)
        {
            var week = due.Where(d => InWeek(first, d)).ToList();
            (week.Count <= 4 && week.Count(d => d.DayKey == "strength") <= 3).Should().BeTrue($"{life.Around(first.Date)}");
        }
    });

    [Fact]
    public void The_calendar_ahead_begins_with_what_is_due_and_goes_on_with_what_is_next() => Holds(life =>
    {
        foreach (var o in life.Offers.Where((_, i) => i % 29 == 0))
        {
            var ahead = DueRule.Ahead(life.Plan, o.Past, o.Date, 60, o.Away);
            ahead[0].Kind.Should().Be(o.Due.Kind);
            ahead.Skip(1).First(a => a.Kind == DueKind.Train).Should().Match<DayAhead>(a => a.Date == o.Due.Next && a.Day == o.Due.NextDay);
        }
    });

    [Fact]
    public void A_lifter_who_always_comes_has_strength_days_at_most_three_days_apart()
    {
        foreach (var plan in Plans)
        {
            var life = Live(plan, [.. Enumerable.Repeat(Day.Comes, Days)], new int[Days]);
            var strength = life.Done.Where(d => d.Day.DayKey == "strength").Select(d => d.Day.Date).ToList();
            strength.Should().HaveCountGreaterThan(200);
            strength.Zip(strength.Skip(1)).Should().OnlyContain(p => Period.DaysBetween(p.First, p.Second) <= DueRule.StrengthApart);
        }
    }

    private static bool InWeek(DayDone first, DayDone day) => day.Date >= first.Date && day.Date < first.Date.PlusDays(7);

    private static void Holds(Action<Life> holds) => Lives.Sample(holds, iter: 40, print: l => $"{l.Plan.Name}");

    private static Life Live(Plan plan, Day[] days, int[] lengths)
    {
        var life = new Life(plan);
        for (var i = 0; i < days.Length; i++)
        {
            var date = Start.PlusDays(i);
            if (days[i] == Day.Leaves && !life.Away.Exists(a => a.Holds(date)))
            {
                life.Away.Add(new DaysAway(date, date.PlusDays(lengths[i] - 1)));
            }

            life.Step(date, days[i] == Day.Comes, days[i] == Day.Extra);
        }

        return life;
    }

    private sealed record Offer(LocalDate Date, DayDue Due, IReadOnlyList<DayDone> Past, IReadOnlyList<DaysAway> Away);

    private sealed class Life(Plan plan)
    {
        public Plan Plan => plan;

        public List<(DayDone Day, bool Extra)> Done { get; } = [];

        public List<DaysAway> Away { get; } = [];

        public List<Offer> Offers { get; } = [];

        /// <summary>Three weeks of it in words, for a test that fails.</summary>
        public string Around(LocalDate date) => string.Join(
            ", ",
            Done.Where(d => Period.DaysBetween(date, d.Day.Date) is >= -12 and <= 8).Select(d => $"{d.Day.Date.Short()} {d.Day.DayKey}{(d.Extra ? " extra" : "")}")
                .Concat(Away.Where(a => Period.DaysBetween(date, a.From) is >= -20 and <= 8).Select(a => $"away {a.From.Short()} to {a.Until?.Short()}"))
                .Append(plan.Rolls ? "rolling" : string.Join(' ', plan.Week.OrderBy(w => w.Key).Select(w => $"{w.Key} {w.Value}"))));

        public void Step(LocalDate date, bool comes, bool extra)
        {
            IReadOnlyList<DayDone> past = [.. Done.Select(d => d.Day)];
            IReadOnlyList<DaysAway> away = [.. Away];
            var due = DueRule.For(plan, past, date, away);
            Offers.Add(new Offer(date, due, past, away));
            if (comes && due.Day is { } day)
            {
                Done.Add((new DayDone(date, day.Key), false));
            }
            else if (extra)
            {
                Done.Add((new DayDone(date, DueRule.Extra(plan, past, date, away).Key), true));
            }
        }
    }
}
