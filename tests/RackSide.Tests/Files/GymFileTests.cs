using CsCheck;
using NodaTime;
using RackSide.Files;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Tests.Files;

public class GymFileTests
{
    private const string Good = """
        unit: kg
        training_days: [friday, monday]
        bars:
          - name: long bar
            mass: 20 kg
        plates:
          1.25 kg: 1
          20 kg: 2
        dumbbells: [5 kg, 2.5 kg]
        equipment: [rack, bench]
        sound: off
        """;

    private static readonly IReadOnlyList<IsoDayOfWeek>[] Weeks =
    [
        [IsoDayOfWeek.Monday],
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday],
        [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Sunday],
        [],
    ];

    private static readonly DateTimeZone?[] Zones = [null, DateTimeZoneProviders.Tzdb["Europe/London"], DateTimeZoneProviders.Tzdb["Australia/Lord_Howe"]];

    private static readonly IsoDayOfWeek[] Starts = [IsoDayOfWeek.Monday, IsoDayOfWeek.Sunday, IsoDayOfWeek.Saturday];

    private static readonly string[] Plain = [.. KitDefaults.EquipmentWords.Except(["barbell", "plates", "dumbbells", "cable stack"])];

    private static readonly Gen<HouseRules> Gyms =
        from unit in Gen.Bool
        let masses = Gen.Int[1, 400].Select(quarters => new Mass(quarters / 4m, unit ? MassUnit.Kilogram : MassUnit.Pound))
        from names in Gen.String[1, 12].Where(Writable).Array[1, 3]
        from bars in masses.Array[names.Length]
        from plates in masses.HashSet[0, 8]
        from pairs in Gen.Int[0, 9].Array[plates.Count]
        from dumbbells in masses.HashSet[0, 6]
        from stack in masses.HashSet[0, 6]
        from things in Gen.Int[0, Plain.Length - 1].Select(i => Plain[i]).HashSet[0, 6]
        from week in Gen.Int[0, Weeks.Length - 1].Select(i => Weeks[i])
        from sound in Gen.Bool
        let owned = plates.OrderDescending().Zip(pairs, (m, p) => new PlatePairs(m, p)).ToList()
        let kit = new GymKit
        {
            Unit = unit ? MassUnit.Kilogram : MassUnit.Pound,
            Bars = [.. names.Zip(bars, (n, m) => new Bar(n, m))],
            Plates = owned,
            Dumbbells = [.. dumbbells.Order()],
            Stack = [.. stack.Order()],
            Equipment = things.Append("barbell")
                .Concat(owned.Any(p => p.Pairs > 0) ? ["plates"] : [])
                .Concat(dumbbells.Count > 0 ? ["dumbbells"] : [])
                .Concat(stack.Count > 0 ? ["cable stack"] : []).ToHashSet(),
        }
        from zone in Gen.Int[0, Zones.Length - 1].Select(i => Zones[i])
        from starts in Gen.Int[0, Starts.Length - 1].Select(i => Starts[i])
        from room in Gen.Int[0, 100_000]
        select new HouseRules(kit, week, sound) { Zone = zone, WeekStarts = starts, BackupMegabytes = room };

    // Half a surrogate pair cannot be typed or saved.
    private static bool Writable(string name) => !name.Any(char.IsSurrogate);

    private static IEnumerable<string> Sentences(string text) => GymFile.Read(text, "gym.yaml").Mistakes.Select(m => m.ToString());

    [Fact]
    public void What_is_written_reads_back_as_the_same_house_rules() =>
        Gyms.Sample(rules => GymFile.Read(GymFile.Write(rules), "gym.yaml").OrThrow().Should().BeEquivalentTo(rules), iter: 200);

    [Theory]
    [InlineData(MassUnit.Kilogram)]
    [InlineData(MassUnit.Pound)]
    public void A_new_gym_reads_back_as_it_was_set_up(MassUnit unit)
    {
        var rules = new HouseRules(KitDefaults.For(unit), Weeks[1], Sound: true);

        GymFile.Read(GymFile.Write(rules), "gym.yaml").OrThrow().Should().BeEquivalentTo(rules);
    }

    [Fact]
    public void The_written_file_tells_a_person_how_to_change_it() =>
        GymFile.Write(new HouseRules(KitDefaults.For(MassUnit.Kilogram), Weeks[1], Sound: true)).Should().StartWith("""
            # House rules of this gym. Change them here or on the set-up screen; they are read each time the program starts.

            # The unit marked on the plates: kg or lb.
            unit: kg

            # The weekdays people train on, with at least a day of rest between. The word rolling in place of the list has each
            # training day come its rest days after the one before, whatever the weekday.
            training_days: [monday, wednesday, friday]

            # Bars, the one used by default first. A bar can also tell the mass of a collar (collars: 2.5 kg, two of them count), the
            # room on a sleeve (sleeve: 415 mm), what it is kept for (for: [elbow_flexion, bench-press]), and whether it goes to
            # another rack height with its plates on (moves: loaded).
            bars:
              - name: bar
                mass: 20 kg

            # Plates: the mass of one as it is marked, in kg or lb, then how many pairs of it there are. Where sleeves are short,
            # a plate can tell its thickness: 20 kg: {pairs: 1, thickness: 27 mm}
            plates:
              20 kg: 1
            """.ReplaceLineEndings("\n"));

    [Fact]
    public void Lists_come_back_in_the_order_the_kit_promises()
    {
        var rules = GymFile.Read(Good, "gym.yaml").OrThrow();

        rules.TrainingDays.Should().Equal(IsoDayOfWeek.Monday, IsoDayOfWeek.Friday);
        rules.Kit.Plates.Select(p => p.Mass).Should().Equal(Mass.Kg(20), Mass.Kg(1.25m));
        rules.Kit.Dumbbells.Should().Equal(Mass.Kg(2.5m), Mass.Kg(5));
        rules.Sound.Should().BeFalse();
    }

    [Fact]
    public void What_a_gym_lists_by_mass_counts_as_equipment() =>
        GymFile.Read(Good, "gym.yaml").OrThrow().Kit.Equipment
            .Should().BeEquivalentTo("rack", "bench", "barbell", "plates", "dumbbells");

    [Fact]
    public void Dumbbells_that_are_named_but_none_of_which_is_owned_do_not_count() =>
        GymFile.Read(Good.Replace("[5 kg, 2.5 kg]", "[]", StringComparison.Ordinal).Replace("[rack, bench]", "[rack, dumbbells]", StringComparison.Ordinal), "gym.yaml")
            .OrThrow().Kit.Equipment.Should().BeEquivalentTo("rack", "barbell", "plates");

    [Theory]
    [InlineData("unit: kg", "unit: stone", "1: unit: \"stone\" is not a unit of mass; write kg or lb")]
    [InlineData("[friday, monday]", "[friday, saturday]", "2: saturday: follows friday without a day of rest; leave at least one day between training days")]
    [InlineData("[friday, monday]", "[friday, friday]", "2: training_days: friday is listed twice; keep it once")]
    [InlineData("[friday, monday]", "[]", "2: training_days: the list is empty; list weekdays, such as [monday, wednesday, friday], or write rolling")]
    [InlineData("mass: 20 kg", "mass: 0 kg", "5: mass: \"0 kg\" is outside 0.1 kg to 500 kg; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData("20 kg: 2", "20: 2", "8: plates: \"20\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData("20 kg: 2", "20 kg: two", "8: 20 kg: \"two\" is not a whole number; write a whole number, such as 1")]
    [InlineData("20 kg: 2", "1.250 kg: 2", "8: plates: 1.25 kg is listed twice; keep it once")]
    [InlineData("[rack, bench]", "[rack, bnech]", "10: equipment: no exercise asks for \"bnech\"; did you mean bench?")]
    [InlineData("[rack, bench]", "[rack, cable stack]", "10: equipment: cable stack stands here without masses; list them under stack")]
    [InlineData("sound: off", "sound: loud", "11: sound: \"loud\" is not on or off; write on or off")]
    [InlineData("sound: off", "time_zone: Europe/Lodnon", "11: time_zone: \"Europe/Lodnon\" is no time zone; did you mean Europe/London?")]
    [InlineData("sound: off", "time_zone: my garage", "11: time_zone: \"my garage\" is no time zone; write a place of the time zone list, such as Europe/London")]
    [InlineData("sound: off", "week_starts: friday", "11: week_starts: \"friday\" is not a day that a week begins with; write monday, sunday or saturday")]
    [InlineData("sound: off", "sounds: off", "11: sounds: there is no such field here; did you mean sound?")]
    public void A_broken_line_is_told_in_one_sentence(string line, string broken, string expected) =>
        Sentences(Good.Replace(line, broken, StringComparison.Ordinal))
            .Should().Equal("gym.yaml:" + expected);

    [Fact]
    public void A_comma_in_a_list_parts_its_items_and_a_number_without_a_unit_is_told() =>
        Sentences(Good.Replace("2.5 kg", "2,75 kg", StringComparison.Ordinal)).Should().Equal("gym.yaml:9: dumbbells: \"2\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb");

    [Fact]
    public void An_empty_file_is_told_as_empty() =>
        Sentences("").Should().Equal("gym.yaml: the file is empty; write unit, bars, plates and training_days");
}
