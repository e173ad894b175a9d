using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

/// <summary>The table of Reference/what-is-due.md, a row a test, and what no row says.</summary>
public class DueRuleTests
{
    public static TheoryData<int, string> Rows
    {
        get
        {
            var data = new TheoryData<int, string>();
            foreach (var (row, i) in DueRow.All.Select((r, i) => (r, i)))
            {
                data.Add(i, $"{row.Plan}: {row.Happened}; {row.Today}");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void The_day_due_follows_from_what_was_done(int row, string happened)
    {
        DueRow.All[row].Answered().Should().Be(DueRow.All[row], happened);
    }

    [Fact]
    public void The_table_is_long_and_speaks_of_every_answer()
    {
        DueRow.All.Should().HaveCountGreaterThan(90);
        DueRow.All.Select(r => r.Due).Distinct().Should().BeEquivalentTo("strength", "skills", "rest", "done", "away");
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
