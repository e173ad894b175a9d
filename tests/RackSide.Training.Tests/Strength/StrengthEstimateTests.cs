using RackSide.Tollbooth;
using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Training.Tests.Strength;

public class StrengthEstimateTests
{
    private static readonly Exercise Squat = TollboothDay.Catalogue["back-squat"];

    // 60 kg x 5: Epley 70.0, Brzycki 67.5, Wathen 69.95 and so on, from shared reference vectors worked out from the cited
    // formulas; the lowest and highest of the seven are Brzycki and O'Conner with 67.5 and Mayhew with 71.4.
    [Fact]
    public void The_best_honest_set_of_a_day_gives_the_span()
    {
        var range = StrengthEstimateOf(5, 5, 4, 3, 5);

        range!.Lowest.Amount.Should().BeApproximately(67.5m, 0.01m);
        range.Highest.Amount.Should().BeApproximately(71.41m, 0.01m);
    }

    [Fact]
    public void A_day_of_missed_sets_says_nothing() => StrengthEstimateOf(0, 0).Should().BeNull();

    [Theory]
    [InlineData(LoadType.Assisted)]
    [InlineData(LoadType.AddedWeight)]
    [InlineData(LoadType.Bodyweight)]
    [InlineData(LoadType.Band)]
    public void Where_the_load_is_not_all_that_is_lifted_nothing_is_said(LoadType type) =>
        Training.Strength.StrengthEstimate.Of(Day(5), Squat with { LoadType = type }).Should().BeNull();

    private static Training.Strength.MaximumRange? StrengthEstimateOf(params int[] reps) =>
        Training.Strength.StrengthEstimate.Of(Day(reps), Squat);

    private static Performance Day(params int[] reps) =>
        new TrainingHistory([TollboothDay.SquatOnMonday(60, reps)]).Of("back-squat").Single();
}
