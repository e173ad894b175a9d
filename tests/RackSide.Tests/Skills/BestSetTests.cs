using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Skills;

namespace RackSide.Tests.Skills;

/// <summary>What a suggestion for the next share rests on.</summary>
public class BestSetTests
{
    private static readonly LocalDate Today = new(2026, 11, 25);

    [Fact]
    public void The_best_set_is_the_most_honest_reps_of_twelve_weeks()
    {
        BestSet.Reps(Done(Today.PlusDays(-85), 30), "push-up", Today).Should().Be(30, "there is nothing newer");
        BestSet.Reps(new([.. Done(Today.PlusDays(-85), 30).Sessions, .. Done(Today.PlusDays(-7), 12, 14, 9).Sessions]), "push-up", Today).Should().Be(14);
        BestSet.Reps(Done(Today.PlusDays(-7), 12), "incline-push-up", Today).Should().BeNull();
    }

    [Fact]
    public void The_pace_counts_from_the_first_share_without_its_reps()
    {
        var shares = Done(Today, 10, 10, 10).Sessions[0].Sets;

        TotalPace.Of([]).Should().BeNull();
        TotalPace.Of([shares[0]])!.For(20).Should().BeNull();
        TotalPace.Of(shares)!.Took.Should().Be(Duration.FromMinutes(2));
        TotalPace.Of(shares)!.For(40).Should().Be(Duration.FromMinutes(4));
    }

    private static TrainingHistory Done(LocalDate date, params int[] reps)
    {
        var begun = date.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant();
        var asked = new Prescription
        {
            Slot = "push-up-total",
            Motion = Motion.HorizontalPush,
            Exercise = "push-up",
            Scheme = new Scheme.Total(100),
            Targets = [100],
            Rest = Duration.Zero,
            Why = new Reason("test", "test"),
        };
        return new([new SessionRecord(
            new SessionHead
            {
                Id = new FactId("t", 0),
                Begun = begun,
                Date = date,
                Zone = "Europe/London",
                Lifter = "ottoline",
                Plan = "Tollbooth plan",
                DayKey = "skills",
                DayName = "skills day",
                Kind = DayKind.Skills,
                Prescriptions = [asked],
            },
            [.. reps.Select((r, i) => (Fact)new SetDone(
                new FactId("t", i + 1), begun + Duration.FromMinutes(i), "push-up-total", "push-up", SetKind.Share, i + 1, 10, r, null))])]);
    }
}
