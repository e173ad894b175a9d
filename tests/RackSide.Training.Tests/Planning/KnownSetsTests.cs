using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Progression;
using static RackSide.Training.Tests.Progression.Lifting;

namespace RackSide.Training.Tests.Planning;

/// <summary>A set known from elsewhere, and where it lets a lifter begin: 5x5 or 3x6-12 with four in reserve, rounded down.</summary>
public class KnownSetsTests
{
    private static readonly LocalDate Monday = new(2026, 11, 2);

    [Theory]
    // The lowest of the formulas and tables for 5 reps with 4 left, which is a set of 9 at the limit. Lombardi 1989 is lowest
    // below 9: 60 x (8/9)^0.1 is 59.3, and the handbook's rows are 60/0.80 x 0.77 = 57.75; by Lander 1985 it is 57.9.
    [InlineData("60 x 8", "57.5 kg", "first time: you know 60 kg x 8, so 57.5 kg, with reps to spare")]
    // A set of 5: the handbook's rows give 60/0.87 x 0.77 = 53.1, Brzycki 1993 60 x 28/32 = 52.5.
    [InlineData("60 x 5", "52.5 kg", "first time: you know 60 kg x 5, so 52.5 kg, with reps to spare")]
    // Of one rep the load itself is the maximum: 77 % of it is 46.2 in the handbook.
    [InlineData("60 x 1", "45 kg", "first time: you know 60 kg x 1, so 45 kg, with reps to spare")]
    // Never above what was lifted, though a set of 12 would speak for more.
    [InlineData("60 x 12", "60 kg", "first time: you know 60 kg x 12, so 60 kg, with reps to spare")]
    // Lighter than the bar: the bar.
    [InlineData("12 x 8", "20 kg", "first time: you know 12 kg x 8, so 20 kg, with reps to spare")]
    public void A_squat_begins_below_the_set_that_is_known(string known, string load, string why)
    {
        var asked = Prescribe(Squat, Known(Squat, known, Monday));

        (asked.Load.ToString(), asked.Why.Line, asked.Why.Code).Should().Be((load, why, Reasons.KnownSet));
        asked.Search.Should().BeNull("the ramp leads there");
    }

    [Fact]
    public void It_has_its_ramp() =>
        Prescribe(Squat, Known(Squat, "60 x 8", Monday)).Ramp.Select(r => $"{r.Load.Number}x{r.Reps}").Should().StartWith("20x10").And.HaveCount(4);

    [Theory]
    [InlineData(0, true)]
    [InlineData(56, true)]
    [InlineData(57, false)]
    public void It_counts_for_eight_weeks(int days, bool counts) =>
        (Prescribe(Squat, Known(Squat, "60 x 8", Monday.PlusDays(-days))).Why.Code == Reasons.KnownSet).Should().Be(counts);

    [Fact]
    public void The_newest_counts_and_one_taken_back_does_not()
    {
        Fact older = Known(Squat, "60 x 8", Monday), newer = new SetKnown(new FactId("rack", 2), Instant.MinValue, Monday, Squat.Id, 8, Mass.Kg(40));
        var strike = new FactStruck(new FactId("rack", 3), Instant.MinValue, newer.Id);

        Prescribe(Squat, older, newer).Load.Should().Be(Mass.Kg(37.5m));
        Prescribe(Squat, older, newer, strike).Load.Should().Be(Mass.Kg(57.5m));
    }

    [Fact]
    public void Another_exercise_and_one_with_a_history_are_not_moved_by_it()
    {
        Prescribe(Press, Known(Squat, "60 x 8", Monday)).Why.Code.Should().Be(Reasons.FirstTime);
        Next(Slot(Squat, Fives), Squat, "Mon 2 40@5: 5 5 5 5 5", "Fri 6").Why.Code.Should().Be(Reasons.AllMet);
    }

    [Fact]
    public void A_known_set_in_pounds_begins_at_kilograms_that_load()
    {
        var asked = Prescribe(Squat, new SetKnown(new FactId("rack", 1), Instant.MinValue, Monday, Squat.Id, 8, Mass.Lb(135)));

        asked.Load.Should().Be(Mass.Kg(57.5m), "135 lb is 61.2 kg");
    }

    [Theory]
    [InlineData("60", "8", null)]
    [InlineData("60", "12", null)]
    [InlineData("60", "0", "tell a set of 1 to 12 reps: more of them say little of strength")]
    [InlineData("60", "13", "tell a set of 1 to 12 reps: more of them say little of strength")]
    [InlineData("60", "2.5", "tell a set of 1 to 12 reps: more of them say little of strength")]
    [InlineData("0", "5", "tell a load over 0 and up to 300 kg, the bar counted")]
    [InlineData("625", "5", "tell a load over 0 and up to 300 kg, the bar counted")]
    public void What_cannot_be_is_refused_in_words(string load, string reps, string? words) =>
        KnownSets.Refusal(Mass.Kg(NumberEntry.Parse(load)!.Value), NumberEntry.Parse(reps)!.Value).Should().Be(words);

    [Fact]
    public void Only_a_load_that_is_all_of_what_is_lifted_can_be_told() =>
        new[] { Squat, Curl, HelpedChin, ChinUp, PushUp, Plank }.Where(KnownSets.CanBeTold).Should().Equal(Squat, Curl);

    private static SetKnown Known(Exercise exercise, string set, LocalDate on)
    {
        var parts = set.Split(" x ");
        return new(new FactId("rack", 1), Instant.MinValue, on, exercise.Id, (int)NumberEntry.Parse(parts[1])!.Value, Mass.Kg(NumberEntry.Parse(parts[0])!.Value));
    }

    private static Prescription Prescribe(Exercise exercise, params Fact[] told) =>
        Planner.Prescribe(Slot(exercise, Fives) with { Ramp = Plans.RampKind.Full }, exercise, Garage, new TrainingHistory([], told), Monday);
}
