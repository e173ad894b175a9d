using CsCheck;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Tests.Files;

/// <summary>A kit changed on the screen, in a file that a person keeps.</summary>
public class GymEditTests
{
    private const string Kept = """
        # Ottoline's garage. Do not lose these words.
        unit: kg   # the plates say so

        training_days: [monday, friday]

        # The long one came with the toll house.
        bars:
          - name: bar      # in the rack
            mass: 20 kg    # weighed
            # it is a little bent
          - name: light bar
            mass: 15 kg

        plates:
          # small ones first, as they hang on the wall
          1.25 kg: 1   # chipped
          2.5 kg: 1
          20 kg: 2     # the blue ones

        dumbbells: [2.5 kg, 5 kg]   # under the bench
        equipment:
          - rack
          - bench   # firm
        sound: off
        # the end
        """;

    private static readonly GymKit Before = Kit(Kept);

    [Fact]
    public void One_more_pair_changes_one_number() =>
        Edited(k => k with { Plates = [.. k.Plates.Select(p => p.Mass == Mass.Kg(20) ? p with { Pairs = 3 } : p)] })
            .Should().Be(Kept.Replace("20 kg: 2     # the blue ones", "20 kg: 3  # the blue ones", StringComparison.Ordinal));

    [Fact]
    public void A_new_kind_of_plates_adds_one_line() =>
        Edited(k => k with { Plates = [.. k.Plates.Append(new(Mass.Lb(10), 1)).OrderByDescending(p => p.Mass)] })
            .Should().Contain("10 lb: 1\n").And.Contain("1.25 kg: 1   # chipped").And.Contain("# small ones first");

    [Fact]
    public void A_plate_taken_out_takes_its_line_along_and_no_other() =>
        Edited(k => k with { Plates = [.. k.Plates.Where(p => p.Mass != Mass.Kg(2.5m))] })
            .Should().Be(Kept.Replace("  2.5 kg: 1\n", "", StringComparison.Ordinal));

    [Fact]
    public void A_bar_gets_collars_and_keeps_its_comments() =>
        Edited(k => k with { Bars = [Bar.Collared("bar", Mass.Kg(20), Mass.Kg(2.5m)), k.Bars[1]] })
            .Should().Be(Kept.Replace("    # it is a little bent\n", "    # it is a little bent\n    collars: 2.5 kg\n", StringComparison.Ordinal));

    [Fact]
    public void Another_mass_of_a_bar_keeps_the_comment_behind_it() =>
        Edited(k => k with { Bars = [new("bar", Mass.Kg(20.3m)), k.Bars[1]] })
            .Should().Be(Kept.Replace("mass: 20 kg    # weighed", "mass: 20.3 kg  # weighed", StringComparison.Ordinal));

    [Fact]
    public void The_other_bar_can_come_first() =>
        Kit(Edited(k => k with { Bars = [k.Bars[1], k.Bars[0]] })).Bars.Select(b => b.Name).Should().Equal("light bar", "bar");

    [Fact]
    public void A_list_on_one_line_stays_on_one_line() =>
        Edited(k => k with { Dumbbells = [Mass.Kg(2.5m), Mass.Lb(10), Mass.Kg(5)] })
            .Should().Be(Kept.Replace("[2.5 kg, 5 kg]   # under", "[2.5 kg, 10 lb, 5 kg]  # under", StringComparison.Ordinal));

    [Fact]
    public void A_field_that_is_not_there_yet_comes_last() =>
        Edited(k => k with { Belt = null }).Should().EndWith("# the end\n\nbelt: no\n");

    [Fact]
    public void What_a_person_changed_meanwhile_stays_changed()
    {
        var meanwhile = Kept.Replace("mass: 15 kg", "mass: 14 kg", StringComparison.Ordinal);
        var after = Before with { Dumbbells = [Mass.Kg(5)] };

        var kit = Kit(GymEdit.Apply(meanwhile, Before, after, "gym.yaml").OrThrow());

        kit.Bars[1].Mass.Should().Be(Mass.Kg(14));
        kit.Dumbbells.Should().Equal(Mass.Kg(5));
    }

    [Fact]
    public void A_file_with_a_mistake_is_not_touched() =>
        GymEdit.Apply(Kept.Replace("sound: off", "sound: loud", StringComparison.Ordinal), Before, Before with { Belt = null }, "gym.yaml")
            .Mistakes.Should().ContainSingle().Which.Field.Should().Be("sound");

    [Fact]
    public void Line_ends_of_the_file_stay_what_they_are()
    {
        var windows = Kept.Replace("\n", "\r\n", StringComparison.Ordinal);

        GymEdit.Apply(windows, Before, Before with { Dumbbells = [] }, "gym.yaml").OrThrow().Should().Contain("dumbbells: []  # under the bench\r\nequipment:\r\n");
    }

    [Fact]
    public void Whatever_is_changed_reads_back_as_meant_and_all_else_stays() =>
        Changes.Sample(
            after =>
            {
                var text = GymEdit.Apply(Kept, Before, after, "gym.yaml").OrThrow();
                var read = GymFile.Read(text, "gym.yaml").OrThrow();
                GymFile.Write(read).Should().Be(GymFile.Write(read with { Kit = GymEdit.Implied(after) }));
                text.Should().Contain("Do not lose these words").And.Contain("unit: kg   # the plates say so").And.Contain("The long one came").And.Contain("# the end");
            },
            iter: 300);

    private static Gen<GymKit> Changes { get; } =
        from plates in Gen.Int[0, 3].Array[6]
        from dumbbells in Gen.Int[1, 30].HashSet[0, 6]
        from bars in Gen.Shuffle(Before.Bars.Append(new("curl bar", Mass.Lb(18)) { Motions = [Motion.ElbowFlexion], Sleeve = 150 }).ToArray())
        from barCount in Gen.Int[1, 3]
        from bands in Gen.Int[0, 2]
        from belt in Gen.Int[0, 2].Select(i => new Belt?[] { null, new(null), new(Mass.Kg(0.8m)) }[i])
        from words in Gen.Shuffle(new[] { "rack", "bench", "wall", "mat" })
        from wordCount in Gen.Int[0, 4]
        select Before with
        {
            Plates = [.. new[] { Mass.Kg(20), Mass.Lb(35), Mass.Kg(10), Mass.Kg(5), Mass.Kg(2.5m), Mass.Kg(1.25m) }
                .Zip(plates, (m, n) => new PlatePairs(m, n) { Thickness = n == 3 ? 22.5m : null }).Where(p => p.Pairs > 0).OrderByDescending(p => p.Mass)],
            Dumbbells = [.. dumbbells.Order().Select(d => Mass.Kg(d))],
            Bars = [.. bars.Take(barCount)],
            Handles = bands == 1 ? [new(new("short handle", Mass.Kg(2)), 2) { Plates = [new(Mass.Kg(1), 4)] }] : [],
            Machines = bands == 2 ? [new("leg press", [Mass.Kg(10)], [Mass.Kg(5)])] : [],
            Bands = [.. Enumerable.Range(0, bands).Select(i => new Band($"band {i}", i == 0 ? null : Mass.Kg(20)))],
            Belt = belt,
            Equipment = words.Take(wordCount).ToHashSet(),
        };

    private static string Edited(Func<GymKit, GymKit> change) => GymEdit.Apply(Kept, Before, change(Before), "gym.yaml").OrThrow();

    private static GymKit Kit(string text) => GymFile.Read(text, "gym.yaml").OrThrow().Kit;
}
