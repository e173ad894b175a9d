using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

/// <summary>
/// The plan is Monday strength, Wednesday skills, Friday strength. Dates are November 2026. Common practice, no source,
/// but for the rest day between (NSCA: non-consecutive days, from memory).
/// </summary>
public class DueRuleTests
{
    [Theory]
    // The week as it should go.
    [InlineData("Mon 2 strength", "Mon 2", "done", "Wed 4 skills")]
    [InlineData("Mon 2 strength", "Tue 3", "rest", "Wed 4 skills")]
    [InlineData("Mon 2 strength", "Wed 4", "skills", "Fri 6 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Wed 4", "done", "Fri 6 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Thu 5", "rest", "Fri 6 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Fri 6", "strength", "Mon 9 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills, Fri 6 strength", "Sat 7", "rest", "Mon 9 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills, Fri 6 strength", "Sun 8", "rest", "Mon 9 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills, Fri 6 strength", "Mon 9", "strength", "Wed 11 skills")]
    // A skills day was missed: it is dropped.
    [InlineData("Mon 2 strength", "Thu 5", "rest", "Fri 6 strength")]
    [InlineData("Mon 2 strength", "Fri 6", "strength", "Mon 9 strength")]
    // Monday's strength day was missed: skills make way on Wednesday, and Friday stays.
    [InlineData("Mon 2 strength, Wed 4 skills, Fri 6 strength", "Tue 10", "rest", "Wed 11 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills, Fri 6 strength", "Wed 11", "strength", "Fri 13 strength")]
    [InlineData("Fri 6 strength, Wed 11 strength", "Thu 12", "rest", "Fri 13 strength")]
    [InlineData("Fri 6 strength, Wed 11 strength", "Fri 13", "strength", "Mon 16 strength")]
    // All of Monday to Wednesday was missed: Friday is once, not twice.
    [InlineData("Mon 2 strength, Fri 6 strength", "Thu 12", "rest", "Fri 13 strength")]
    [InlineData("Mon 2 strength, Fri 6 strength", "Fri 13", "strength", "Mon 16 strength")]
    // Friday's strength day was missed: Saturday can take it, Sunday cannot (Monday trains again).
    [InlineData("Mon 2 strength, Wed 4 skills", "Sat 7", "strength", "Mon 9 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Sun 8", "rest", "Mon 9 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Mon 9", "strength", "Wed 11 skills")]
    [InlineData("Mon 2 strength, Wed 4 skills, Sat 7 strength", "Sun 8", "rest", "Mon 9 strength")]
    // Nobody made the missed Friday good, but Monday was done: nothing is owed.
    [InlineData("Mon 2 strength, Wed 4 skills, Mon 9 strength", "Wed 11", "skills", "Fri 13 strength")]
    // A whole week was missed.
    [InlineData("Mon 2 strength, Wed 4 skills", "Wed 11", "strength", "Fri 13 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Mon 16", "strength", "Wed 18 skills")]
    // An extra day was chosen: the rest day after it stands, also on a day of the pattern.
    [InlineData("Mon 2 strength, Tue 3 skills", "Wed 4", "rest", "Fri 6 strength")]
    [InlineData("Fri 6 strength, Sun 8 strength", "Mon 9", "rest", "Wed 11 skills")]
    [InlineData("Fri 6 strength, Sun 8 skills", "Mon 9", "rest", "Wed 11 strength")]
    // Two weeks and more away: strength first, on a day of the pattern.
    [InlineData("Mon 2 strength, Wed 4 skills", "Wed 18", "strength", "Fri 20 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Thu 19", "rest", "Fri 20 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Sat 28", "rest", "Mon 30 strength")]
    [InlineData("Mon 2 strength, Wed 4 skills", "Mon 30", "strength", "Wed 32 skills")]
    // The first day ever.
    [InlineData("-", "Mon 2", "strength", "Wed 4 skills")]
    [InlineData("-", "Tue 3", "rest", "Wed 4 strength")]
    [InlineData("-", "Wed 4", "strength", "Fri 6 strength")]
    [InlineData("-", "Fri 6", "strength", "Mon 9 strength")]
    [InlineData("-", "Sat 7", "strength", "Mon 9 strength")]
    [InlineData("-", "Sun 8", "rest", "Mon 9 strength")]
    [InlineData("Wed 4 skills", "Thu 5", "rest", "Fri 6 strength")]
    [InlineData("Sat 7 strength", "Sun 8", "rest", "Mon 9 strength")]
    // A clock that was wrong wrote a day in the future: it is not looked at.
    [InlineData("Mon 2 strength, Fri 20 strength", "Wed 4", "skills", "Fri 6 strength")]
    // A day of an older plan counts as strength.
    [InlineData("Fri 6 old-day, Mon 9 old-day", "Wed 11", "skills", "Fri 13 strength")]
    public void The_day_due_follows_from_what_was_done(string done, string today, string due, string next)
    {
        var answer = DueRule.For(Weeks.Usual, Weeks.Done(done), Weeks.Date(today));

        (answer.Day?.Key ?? answer.Kind switch { DueKind.Rest => "rest", _ => "done" }).Should().Be(due);
        $"{answer.Next.DayOfWeek.ToString()[..3]} {answer.Next.Day + (answer.Next.Month == 12 ? 30 : 0)} {answer.NextDay.Key}"
            .Should().Be(next);
    }

    [Theory]
    [InlineData("Mon 2 strength", "Wed 4", "Wednesday is a skills day")]
    [InlineData("Mon 2 strength", "Tue 3", "you trained yesterday: a rest day comes between")]
    [InlineData("Fri 6 strength", "Tue 10", "Monday's strength day was missed; tomorrow is a training day, so rest today")]
    [InlineData("Fri 6 strength", "Wed 11", "Monday's strength day was missed: it comes today, the skills day is dropped")]
    [InlineData("Wed 4 skills", "Sat 7", "Friday's strength day was missed, and a rest day still follows today")]
    [InlineData("Wed 4 skills", "Fri 27", "23 days since Wed 4 Nov: begin again with strength")]
    [InlineData("-", "Mon 2", "first day: Monday is a strength day")]
    [InlineData("-", "Wed 4", "first day: it begins with strength, to learn the lifts")]
    [InlineData("-", "Sat 7", "first day: tomorrow is free, so a rest day follows")]
    [InlineData("-", "Sun 8", "begin tomorrow: it is a training day, and a rest day must follow each")]
    public void The_why_line_says_which_rule_spoke(string done, string today, string why) =>
        DueRule.For(Weeks.Usual, Weeks.Done(done), Weeks.Date(today)).Why.Should().Be(why);

    [Theory]
    [InlineData("Mon 2 strength", "Tue 3", "skills", "asked for: you trained yesterday; keep it light, stop if form slips")]
    [InlineData("Mon 2 strength", "Mon 2", "skills", "asked for: a second session in a day; keep it light, stop if form slips")]
    [InlineData("Fri 6 strength", "Sun 8", "strength", "asked for: tomorrow's training day then becomes a rest day")]
    [InlineData("Fri 6 strength", "Mon 9", "strength", "Monday is a strength day")]
    public void A_session_asked_for_on_a_rest_day_comes_with_a_caution(string done, string today, string day, string why)
    {
        var answer = DueRule.AskedFor(Weeks.Usual, Weeks.Done(done), Weeks.Date(today));

        answer.Kind.Should().Be(DueKind.Train);
        answer.Day!.Key.Should().Be(day);
        answer.Why.Should().Be(why);
    }

    [Fact]
    public void A_session_asked_for_can_be_another_day_than_the_one_due() =>
        DueRule.AskedFor(Weeks.Usual, Weeks.Done("Fri 6 strength"), Weeks.Date("Mon 9"), Weeks.Skills)
            .Day.Should().Be(Weeks.Skills);

    [Fact]
    public void After_an_extra_session_the_next_date_keeps_its_rest_day() =>
        DueRule.AskedFor(Weeks.Usual, Weeks.Done("Fri 6 strength"), Weeks.Date("Sun 8"))
            .Next.Should().Be(Weeks.Date("Wed 11"));

    [Fact]
    public void A_plan_without_strength_days_still_has_a_next_day()
    {
        var plan = Weeks.Usual with
        {
            Week = new Dictionary<NodaTime.IsoDayOfWeek, string> { [NodaTime.IsoDayOfWeek.Thursday] = "skills" },
        };

        DueRule.For(plan, [], Weeks.Date("Sat 7")).Day!.Kind.Should().Be(DayKind.Skills);
    }
}
