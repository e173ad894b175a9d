using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Kit;

public class KitDefaultsTests
{
    // IWF technical and competition rules, sport equipment (25 to 0.5 kg discs, 20 and 15 kg bars), and IPF rules for the
    // 1.25 kg disc; both as copied in second-hand texts, not seen in the primary one.
    private static readonly decimal[] StandardDiscs = [25, 20, 15, 10, 5, 2.5m, 2, 1.5m, 1.25m, 1, 0.5m];

    [Fact]
    public void Every_kilogram_plate_is_a_disc_that_the_lifting_federations_know() =>
        KitDefaults.Plates(MassUnit.Kilogram).Select(p => p.Mass.Amount).Should().BeSubsetOf(StandardDiscs);

    [Fact]
    public void The_two_competition_bars_are_offered_first() =>
        KitDefaults.Bars(MassUnit.Kilogram).Take(2).Select(b => b.Mass).Should().Equal(Mass.Kg(20), Mass.Kg(15));

    [Fact]
    public void The_33_pound_bar_is_the_15_kilogram_bar_to_within_50_grams() =>
        KitDefaults.Bars(MassUnit.Pound)[2].Mass.Kilograms.Should().BeApproximately(15, 0.05m);

    [Theory]
    [InlineData(MassUnit.Kilogram)]
    [InlineData(MassUnit.Pound)]
    public void A_default_kit_is_in_one_unit_and_in_the_order_the_kit_promises(MassUnit unit)
    {
        var kit = KitDefaults.For(unit);

        kit.Bars.Select(b => b.Mass).Concat(kit.Plates.Select(p => p.Mass)).Concat(kit.Dumbbells)
            .Should().OnlyContain(m => m.Unit == unit);
        kit.Plates.Select(p => p.Mass).Should().BeInDescendingOrder();
        kit.Dumbbells.Should().BeInAscendingOrder();
        kit.Plates.Should().OnlyContain(p => p.Pairs > 0);
        kit.Equipment.Should().BeSubsetOf(KitDefaults.EquipmentWords);
    }
}
