using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Summary;

namespace RackSide.Tests.Skills;

/// <summary>The body's own mass moved, an estimate. The shares are held against what the papers give.</summary>
public class BodyCarriedTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    private static readonly LocalDate Wednesday = new(2026, 11, 25);

    // Push-ups: Ebben 2011 peak 64 % (knees 49, feet raised 70 and 74, hands raised 55 and 41; the middle ones from memory);
    // Suprak 2011 69 to 75 % (knees 54 to 62), from memory; Mier 2014 65 to 75 % (knees 52 to 60), seen.
    // Squat 88.6 % above the knees, chin-up 95.5 % above the elbows: segments of de Leva 1996, from memory.
    [Theory]
    [InlineData("push-up", 0.64, 0.75)]
    [InlineData("knee-push-up", 0.49, 0.62)]
    [InlineData("feet-up-push-up", 0.70, 0.74)]
    [InlineData("incline-push-up", 0.41, 0.55)]
    [InlineData("air-squat", 0.88, 0.89)]
    [InlineData("full-single-leg-squat", 0.88, 0.89)]
    [InlineData("chin-up", 0.95, 1.0)]
    public void A_share_lies_within_what_is_published(string exercise, double low, double high) =>
        ((double)Catalogue[exercise].BodyShare!.Value).Should().BeInRange(low, high);

    [Fact]
    public void Eighty_kilograms_do_a_hundred_push_ups() =>
        BodyCarried.Of([Done("push-up", SetKind.Share, 50, 50)], Catalogue, [new(Wednesday, Mass.Kg(80))]).Should().Be(Mass.Kg(5200));

    [Fact]
    public void One_leg_at_a_time_counts_both_sides() =>
        BodyCarried.Of([Done("full-single-leg-squat", SetKind.Working, 5)], Catalogue, [new(Wednesday, Mass.Kg(100))]).Should().Be(Mass.Kg(890));

    [Fact]
    public void Holds_rows_and_lifters_nobody_weighed_carry_nothing()
    {
        BodyCarried.Of([Done("plank-forearm", SetKind.Hold, 60)], Catalogue, [new(Wednesday, Mass.Kg(80))]).Should().BeNull();
        BodyCarried.Of([Done("inverted-row", SetKind.Working, 10)], Catalogue, [new(Wednesday, Mass.Kg(80))]).Should().BeNull("no confirmed figure for a bar");
        BodyCarried.Of([Done("push-up", SetKind.Share, 50)], Catalogue, [new(Wednesday.PlusDays(1), Mass.Kg(80))]).Should().BeNull();
    }

    private static SessionRecord Done(string exercise, SetKind kind, params int[] reps) => new(
        new SessionHead
        {
            Id = new FactId("t", 0),
            Begun = Instant.MinValue,
            Date = Wednesday,
            Zone = "Europe/London",
            Lifter = "ottoline",
            Plan = "Tollbooth plan",
            DayKey = "skills",
            DayName = "skills day",
            Kind = DayKind.Skills,
            Prescriptions = [],
        },
        [.. reps.Select((r, i) => (Fact)new SetDone(new FactId("t", i + 1), Instant.MinValue, "s", exercise, kind, i + 1, r, r, null))]);
}
