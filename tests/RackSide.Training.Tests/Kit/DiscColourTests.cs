using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Kit;

public class DiscColourTests
{
    // IWF TCRR 3.3 and IPF rules, bars and discs: second-hand copies.
    [Theory]
    [InlineData(25, DiscColour.Red)]
    [InlineData(20, DiscColour.Blue)]
    [InlineData(15, DiscColour.Yellow)]
    [InlineData(10, DiscColour.Green)]
    public void Kilogram_discs_have_the_colours_of_the_federations(int kilograms, DiscColour colour) =>
        DiscColours.Of(Mass.Kg(kilograms)).Should().Be(colour);

    [Fact]
    public void Where_the_standards_give_no_common_colour_there_is_none()
    {
        foreach (var disc in new[] { Mass.Kg(5), Mass.Kg(2.5m), Mass.Kg(1.25m), Mass.Kg(12), Mass.Lb(25), Mass.Lb(45), Mass.Lb(10) })
        {
            DiscColours.Of(disc).Should().BeNull(disc.ToString());
        }
    }
}
