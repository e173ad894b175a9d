using CsCheck;
using NodaTime;
using RackSide.Pages.Kits;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Pages.Tests.Kits;

/// <summary>A gym's kit changed on the screen, from the numeric pad alone.</summary>
public class KitPageTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 7, 0);
    private static readonly GymKit Garage = KitDefaults.For(MassUnit.Kilogram) with { Stack = [Mass.Kg(5), Mass.Kg(10)] };

    public static TheoryData<string, string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, string, int, int>();
            foreach (var (name, keys) in new[]
            {
                ("kit", ""), ("kit-bar", "1 1"), ("kit-bar-for", "1 1 5"), ("kit-plates", "2 3"), ("kit-plate-new", "2 ****** ENTER 45 *"),
                ("kit-dumbbells", "3"), ("kit-machines", "5"), ("kit-things", "8"), ("kit-leaving", "2 3 / /"),
            })
            {
                foreach (var (columns, rows) in new[] { (50, 15), (80, 24), (120, 40), (30, 8) })
                {
                    data.Add(name, keys, columns, rows);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_is_as_expected_and_of_safe_glyphs(string name, string keys, int columns, int rows)
    {
        var kit = Pressed(keys);

        var page = kit.Draw(new PageSize(columns, rows), Now);

        Expected.Match(page, name);
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    [Fact]
    public void A_digit_counts_the_pairs_of_the_marked_line() =>
        Changed("2 3").Plates[0].Pairs.Should().Be(3);

    [Fact]
    public void A_pound_plate_comes_into_a_kilogram_gym_by_the_star() =>
        Changed("2 ****** ENTER 45 * ENTER").Plates.Should().Contain(new PlatePairs(Mass.Lb(45), 1)).And.HaveCount(Garage.Plates.Count + 1);

    [Fact]
    public void A_plate_tells_how_thick_it_is_and_is_taken_out() =>
        Changed("2 ENTER 1 27 ENTER / * ENTER 2").Plates.Should().HaveCount(Garage.Plates.Count - 1).And.Contain(p => p.Thickness == 27);

    [Fact]
    public void A_bar_gets_collars_a_sleeve_and_a_motion_of_its_own()
    {
        var bar = Changed("1 2 8 ENTER 3 2.5 ENTER 4 150 ENTER 5 6").Bars[1];

        (bar.Name, bar.Mass, bar.Collar, bar.Sleeve).Should().Be(("light bar", Mass.Kg(13), Mass.Kg(2.5m), 150m));
        bar.Motions.Should().Equal(Motion.ElbowFlexion);
    }

    [Fact]
    public void The_new_bar_can_be_used_first_and_the_last_one_stays()
    {
        Changed("1 2 15 ENTER 7").Bars.Select(b => b.Mass).Should().Equal(Mass.Kg(15), Mass.Kg(20));
        Pressed("1 1 8").Kit.Bars.Should().HaveCount(1);
    }

    [Fact]
    public void Dumbbells_come_in_rows_and_go_one_by_one()
    {
        Changed("3 2 16 ENTER 2 ENTER 22 ENTER").Dumbbells.TakeLast(4).Should().Equal(Mass.Kg(16), Mass.Kg(18), Mass.Kg(20), Mass.Kg(22));
        Changed("3 3 7.5 ENTER").Dumbbells.Should().NotContain(Mass.Kg(7.5m));
    }

    [Fact]
    public void Handles_a_machine_a_band_and_a_belt_can_be_told()
    {
        Changed("4 1 2 ENTER").Handles.Should().ContainSingle().Which.Count.Should().Be(2);
        Changed("5 3 3 10 ENTER 10 ENTER 50 ENTER").Machines.Should().ContainSingle().Which.Positions.Should().HaveCount(5);
        Changed("6 1 1").Bands.Should().Equal(new Band("thin", null));
        Changed("7 2 .8 ENTER").Belt.Should().Be(new Belt(Mass.Kg(0.8m)));
        Changed("7 3").Belt.Should().BeNull();
        Changed("8 ENTER").Equipment.Should().NotContain("rack");
    }

    [Fact]
    public void Nothing_is_written_unless_the_lifter_says_so()
    {
        Pressed("2 3 / / 3").Write.Should().BeFalse();
        Pressed("2 3 / / 2").Ended.Should().BeFalse();
        Pressed("2 3 / / 1").Should().Match<KitConversation>(k => k.Write && k.Ended);
        Pressed("2 3 / 9").Write.Should().BeTrue();
        Pressed("/").Should().Match<KitConversation>(k => k.Ended && !k.Write);
    }

    [Theory]
    [InlineData("3 1 0 ENTER", "0 kg is outside 0.1 kg to 500 kg; nothing has changed.")]
    [InlineData("3 1 . . ENTER", "\"..\" is not a number; nothing has changed.")]
    [InlineData("3 1 5 ENTER", "5 kg is there already.")]
    [InlineData("3 2 10 ENTER 1 ENTER 5 ENTER", "5 kg is lighter than 10 kg; nothing has changed.")]
    [InlineData("3 2 1 ENTER .1 ENTER 400 ENTER", "That is more than 60; nothing has changed.")]
    [InlineData("2 ****** ENTER 20 ENTER", "20 kg is listed already; its line counts the pairs.")]
    public void A_slip_is_told_and_changes_nothing(string keys, string said)
    {
        var kit = Pressed(keys);

        kit.Kit.Should().BeSameAs(kit.Before);
        kit.Draw(new PageSize(120, 40), Now).Text.Should().Contain(said);
    }

    [Fact]
    public void What_could_not_be_written_stays_on_the_screen_with_the_reason()
    {
        var kit = new KitConversation(Garage, Garage with { Belt = null }, "Not written. gym.yaml:3: sound: \"loud\" is not on or off; write on or off");

        kit.Draw(new PageSize(120, 40), Now).Text.Should().Contain("gym.yaml:3: sound").And.Contain("not written yet");
        kit.Press("/ 1", Now);
        kit.Write.Should().BeTrue();
    }

    [Fact]
    public void No_run_of_keys_ends_in_a_fault() =>
        Gen.OneOf(Gen.Char["0123456789"], Gen.Char["*+-/.!"], Gen.Const('\n')).Array[1, 60].Sample(
            keys =>
            {
                var kit = new KitConversation(Garage);
                foreach (var key in keys.Select(k => k == '\n' ? KeyPress.Enter : KeyPress.Of(k)).TakeWhile(_ => !kit.Ended))
                {
                    kit.Press(key, Now);
                    kit.Draw(new PageSize(50, 15), Now);
                }

                kit.Kit.Bars.Should().NotBeEmpty();
            },
            iter: 1500);

    private static GymKit Changed(string keys)
    {
        var kit = Pressed(keys);
        kit.Kit.Should().NotBeSameAs(kit.Before);
        return kit.Kit;
    }

    private static KitConversation Pressed(string keys)
    {
        var kit = new KitConversation(Garage);
        kit.Press(keys, Now);
        return kit;
    }
}
