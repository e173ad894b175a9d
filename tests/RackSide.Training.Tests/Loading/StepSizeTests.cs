using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>
/// NSCA increments for the less trained: upper body 2.5-5 lb, lower body 5-10 lb (second-hand copies). The kilogram steps,
/// hung weight and help are common practice, no source.
/// </summary>
public class StepSizeTests
{
    [Theory]
    [InlineData(Motion.Squat, 2.5, 5)]
    [InlineData(Motion.Hinge, 2.5, 5)]
    [InlineData(Motion.HorizontalPush, 2.5, 5)]
    [InlineData(Motion.HorizontalPull, 2.5, 5)]
    [InlineData(Motion.VerticalPush, 1.25, 2.5)]
    [InlineData(Motion.ElbowFlexion, 1.25, 2.5)]
    [InlineData(Motion.ElbowExtension, 1.25, 2.5)]
    public void A_bar_steps_by_the_muscle_that_lifts_it(Motion motion, double kilograms, double pounds) =>
        Both(SampleKits.Loaded(LoadType.Barbell, motion)).Should().Be((Mass.Kg((decimal)kilograms), Mass.Lb((decimal)pounds)));

    [Fact]
    public void Pound_steps_stay_within_the_handbook()
    {
        foreach (var motion in Enum.GetValues<Motion>())
        {
            var exercise = SampleKits.Loaded(LoadType.Barbell, motion);
            var (least, most) = motion is Motion.Squat or Motion.Hinge or Motion.SingleLeg ? (5, 10) : (2.5m, 5m);
            StepSizes.For(exercise, MassUnit.Pound).Amount.Should().BeInRange(least, most);
        }
    }

    [Theory]
    [InlineData(LoadType.AddedWeight, 1.25, 2.5)]
    [InlineData(LoadType.Assisted, 5, 10)]
    public void Hung_weight_and_help_have_their_own_steps(LoadType type, double kilograms, double pounds) =>
        Both(SampleKits.Loaded(type)).Should().Be((Mass.Kg((decimal)kilograms), Mass.Lb((decimal)pounds)));

    [Theory]
    [InlineData(LoadType.DumbbellPair)]
    [InlineData(LoadType.DumbbellSingle)]
    [InlineData(LoadType.MachineStack)]
    public void Dumbbells_and_stacks_step_to_whatever_comes_next(LoadType type)
    {
        var next = new ReachableLoads([Mass.Kg(10), Mass.Kg(10.5m), Mass.Kg(20)]);

        next.AtOrAbove(Mass.Kg(10) + StepSizes.For(SampleKits.Loaded(type), MassUnit.Kilogram)).Should().Be(Mass.Kg(10.5m));
    }

    [Theory]
    [InlineData(LoadType.Bodyweight)]
    [InlineData(LoadType.Band)]
    public void What_has_no_told_load_has_no_step(LoadType type) =>
        StepSizes.For(SampleKits.Loaded(type), MassUnit.Pound).Should().Be(Mass.Lb(0));

    private static (Mass Kilograms, Mass Pounds) Both(Exercise exercise) =>
        (StepSizes.For(exercise, MassUnit.Kilogram), StepSizes.For(exercise, MassUnit.Pound));
}
