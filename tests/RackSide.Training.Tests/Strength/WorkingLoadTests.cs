using CsCheck;
using RackSide.Training.Measures;
using RackSide.Training.Strength;

namespace RackSide.Training.Tests.Strength;

public class WorkingLoadTests
{
    // Worked out by hand from the cited formulas and tables (status: as at their names); looking up reps and reps in
    // reserve together is common practice, no source.
    //   60 kg x 8, 5 with 4 left: handbook 60 * 77/80 = 57.75 (Brzycki 60 * 36/29 * 28/36 = 57.93 and the rest give more)
    //   60 kg x 8, 6 with 4 left: Brzycki 60 * 27/29 = 55.862 (handbook 60 * 75/80 = 56.25)
    //   60 kg x 5, 8 with 4 left: handbook 60 * 67/87 = 46.207 (Brzycki 60 * 25/32 = 46.875)
    //   60 kg x 8, 8 with none: the set itself by every way
    //   60 kg x 8, 11 with 4 left: only the handbook's row for 15 is left: 60 * 65/80 = 48.75
    [Theory]
    [InlineData(60, 8, 5, 4, 57.75)]
    [InlineData(60, 8, 6, 4, 55.862)]
    [InlineData(60, 5, 8, 4, 46.207)]
    [InlineData(60, 8, 8, 0, 60)]
    [InlineData(60, 8, 11, 4, 48.75)]
    public void A_known_set_gives_a_cautious_load(decimal known, int knownReps, int reps, int inReserve, decimal expected) =>
        WorkingLoad.From(Mass.Kg(known), knownReps, reps, inReserve)!.Value.Amount.Should().BeApproximately(expected, 0.001m);

    [Fact]
    public void It_is_never_above_what_any_formula_would_give() =>
        Sets.Where((_, _, reps, inReserve) => reps + inReserve <= 12).Sample((known, knownReps, reps, inReserve) =>
            Enum.GetValues<RepFormula>()
                .Select(f => OneRepMaximum.LoadFor(f, OneRepMaximum.By(f, known, knownReps)!.Value, reps + inReserve))
                .OfType<Mass>()
                .Should().OnlyContain(load => WorkingLoad.From(known, knownReps, reps, inReserve) <= load));

    [Fact]
    public void As_many_reps_with_some_left_take_less_than_was_lifted() =>
        Sets.Where((_, knownReps, reps, inReserve) => reps >= knownReps && inReserve > 0 && reps + inReserve <= 12)
            .Sample((known, knownReps, reps, inReserve) =>
                WorkingLoad.From(known, knownReps, reps, inReserve)!.Value.Should().BeLessThan(known));

    [Theory]
    [InlineData(13, 5, 0)]
    [InlineData(8, 12, 4)]
    public void Where_no_formula_and_no_row_speaks_nothing_is_said(int knownReps, int reps, int inReserve) =>
        WorkingLoad.From(Mass.Lb(135), knownReps, reps, inReserve).Should().BeNull();

    [Theory]
    [InlineData(0, 5, 4)]
    [InlineData(8, 0, 4)]
    [InlineData(8, 5, -1)]
    public void Sets_without_reps_are_refused(int knownReps, int reps, int inReserve) =>
        FluentActions.Invoking(() => WorkingLoad.From(Mass.Kg(60), knownReps, reps, inReserve))
            .Should().Throw<ArgumentOutOfRangeException>();

    private static Gen<(Mass Known, int KnownReps, int Reps, int InReserve)> Sets =>
        Gen.Select(Gen.Int[5, 300].Select(kg => Mass.Kg(kg)), Gen.Int[1, 12], Gen.Int[1, 12], Gen.Int[0, 5]);
}
