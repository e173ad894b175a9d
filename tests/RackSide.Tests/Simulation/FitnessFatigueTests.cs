namespace RackSide.Simulation;

/// <summary>
/// The recurrence against values worked out from it by another program (the first seen in a second-hand example too). Time
/// constants: 42 and 7 days second-hand; 45 and 15 days with weights 1 and 2 from memory (Morton 1990).
/// </summary>
public class FitnessFatigueTests
{
    private static readonly FitnessFatigue Morton = new(45, 15);

    [Fact]
    public void A_day_of_50_after_fitness_100_and_fatigue_60()
    {
        var day = new FitnessFatigue(42, 7, 1, 2, 100, 60).Day(50);

        day.Fitness.Should().BeApproximately(147.647, 0.001);
        day.Fatigue.Should().BeApproximately(102.013, 0.001);
        day.Performance.Should().BeApproximately(-56.378, 0.001);
    }

    [Theory]
    [InlineData(0, -100)]
    [InlineData(1, -89.299)]
    [InlineData(7, -39.824)]
    [InlineData(15, -1.923)]
    [InlineData(16, 1.248)]
    [InlineData(40, 27.21)]
    public void One_load_of_100_costs_first_and_pays_later(int days, double performance) =>
        After([100, .. new double[days]]).Performance.Should().BeApproximately(performance, 0.005);

    [Fact]
    public void Its_gain_is_largest_after_about_40_days() =>
        Enumerable.Range(0, 120).MaxBy(day => After([100, .. new double[day]]).Performance).Should().Be(40, "the peak is at 40.315 days");

    [Fact]
    public void A_week_of_every_other_day()
    {
        double[] loads = [100, 0, 100, 0, 100, 0, 0], expected = [-100, -89.299, -179.382, -159.495, -241.073, -213.317, -187.619];

        for (var day = 0; day < loads.Length; day++)
        {
            After(loads[..(day + 1)]).Performance.Should().BeApproximately(expected[day], 0.001);
        }
    }

    [Fact]
    public void A_load_of_100_a_day_settles()
    {
        var settled = After([.. Enumerable.Repeat(100.0, 2000)]);

        settled.Fitness.Should().BeApproximately(4550.185, 0.001);
        settled.Fatigue.Should().BeApproximately(1550.556, 0.001);
        Morton.Steady(100).Should().BeApproximately(settled.Performance, 0.001);
    }

    private static FitnessFatigue After(double[] loads) => loads.Aggregate(Morton, (state, load) => state.Day(load));
}
