using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Tests.Files;

/// <summary>All that a gym can own, as its file tells it.</summary>
public class KitFileTests
{
    private const string Rich = """
        unit: kg
        training_days: [monday, friday]
        bars:
          - name: bar
            mass: 20 kg
            collars: 2.5 kg
            sleeve: 41.5 cm
            moves: loaded
          - name: curl bar
            mass: 18 lb
            for: [elbow_flexion, close-grip-bench]
        plates:
          20 kg: {pairs: 1, thickness: 27 mm}
          10 lb: 2
        dumbbells: [5 kg, 10 lb]
        handles:
          - name: short handle
            mass: 2 kg
            count: 2
            sleeve: 120 mm
            plates:
              1.25 kg: 4
        stack: [5 kg, 10 kg]
        stack_add_ons: [1.25 kg, 1.25 kg]
        machines:
          - name: leg press
            stack: [10 kg, 20 kg]
            add_ons: [5 kg]
        bands:
          - name: thin
          - name: thick
            help: 25 kg
        belt: 0.8 kg
        equipment: [rack]
        """;

    [Fact]
    public void Every_kind_of_thing_is_read()
    {
        var kit = Kit(Rich);

        kit.Bars[0].Should().Be(Bar.Collared("bar", Mass.Kg(20), Mass.Kg(2.5m)) with { Sleeve = 415 });
        kit.Bars[0].MovesLoaded.Should().BeTrue();
        (kit.Bars[1].Mass, kit.Bars[1].IsKept).Should().Be((Mass.Lb(18), true));
        kit.Bars[1].Motions.Should().Equal(Motion.ElbowFlexion);
        kit.Bars[1].Exercises.Should().Equal("close-grip-bench");
        kit.Plates.Should().Equal(new PlatePairs(Mass.Kg(20), 1) { Thickness = 27 }, new PlatePairs(Mass.Lb(10), 2));
        kit.Dumbbells.Should().Equal(Mass.Lb(10), Mass.Kg(5));
        kit.Handles.Should().ContainSingle().Which.Plates.Should().Equal(new PlatePairs(Mass.Kg(1.25m), 4));
        kit.StackAddOns.Should().Equal(Mass.Kg(1.25m), Mass.Kg(1.25m));
        kit.Machines.Should().ContainSingle().Which.AddOns.Should().Equal(Mass.Kg(5));
        kit.Bands.Should().Equal(new Band("thin", null), new Band("thick", Mass.Kg(25)));
        kit.Belt.Should().Be(new Belt(Mass.Kg(0.8m)));
        kit.Equipment.Should().BeEquivalentTo("rack", "barbell", "plates", "dumbbells", "cable stack", "leg press", "band");
    }

    [Fact]
    public void It_is_written_as_it_was_read()
    {
        var rules = GymFile.Read(Rich, "gym.yaml").OrThrow();

        GymFile.Read(GymFile.Write(rules), "gym.yaml").OrThrow().Should().BeEquivalentTo(rules);
    }

    [Fact]
    public void The_example_of_the_document_is_a_gym_without_mistakes()
    {
        var document = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", "kit.md"));

        Kit(document.Split("```yaml\n")[1].Split("```")[0]).Bars.Should().HaveCount(4);
    }

    [Fact]
    public void The_order_of_marks_in_pounds_and_kilograms_is_that_of_their_mass() =>
        Kit(Rich.Replace("10 lb: 2", "45 lb: 2", StringComparison.Ordinal)).Plates.Select(p => p.Mass).Should().Equal(Mass.Lb(45), Mass.Kg(20));

    [Fact]
    public void A_gym_without_a_word_about_belts_has_one_as_it_always_had() =>
        Kit(Rich.Replace("belt: 0.8 kg", "", StringComparison.Ordinal)).Belt.Should().Be(new Belt(null));

    [Theory]
    [InlineData("collars: 2.5 kg", "collars: two", "6: collars: \"two\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData("sleeve: 41.5 cm", "sleeve: 41.5", "7: sleeve: \"41.5\" is not a length; write a number and mm, cm or in, such as 27 mm")]
    [InlineData("moves: loaded", "moves: never", "8: moves: \"never\" is not a way to move a bar; write stripped or loaded")]
    [InlineData("elbow_flexion, close", "elbow_flexoin, close", "11: for: \"elbow_flexoin\" is neither a motion nor an exercise; did you mean elbow_flexion?")]
    [InlineData("close-grip-bench", "push-up", "11: for: push-up is not done with a bar and plates; take it out")]
    [InlineData("{pairs: 1, thickness: 27 mm}", "{thickness: 27 mm}", "13: pairs: missing; write a whole number, such as 1")]
    [InlineData("{pairs: 1, thickness: 27 mm}", "{pairs: 1, thicknes: 27 mm}", "13: thicknes: there is no such field here; did you mean thickness?")]
    [InlineData("{pairs: 1, thickness: 27 mm}", "[1]", "13: 20 kg: a list stands where a number of pairs should be; write a number of pairs, or {pairs: 1, thickness: 27 mm}")]
    [InlineData("count: 2", "count: 0", "19: count: \"0\" is outside 1 to 50; write a whole number, such as 2")]
    [InlineData("name: leg press", "name: leg curl", "26: name: no exercise asks for a machine \"leg curl\"; write cable stack, assist machine, leg press, row machine, chest press machine or shoulder press machine")]
    [InlineData("    stack: [10 kg, 20 kg]\n", "", "26: stack: no position is listed; list masses, such as [2.5 kg, 5 kg]")]
    [InlineData("help: 25 kg", "help: much", "32: help: \"much\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData("belt: 0.8 kg", "belt: leather", "33: belt: \"leather\" is no belt; write yes, no, or the belt's own mass where it is to count, such as 0.8 kg")]
    public void A_broken_line_is_told_in_one_sentence(string line, string broken, string expected)
    {
        var text = Rich.ReplaceLineEndings("\n");
        text.Should().Contain(line);
        GymFile.Read(text.Replace(line, broken, StringComparison.Ordinal), "gym.yaml").Mistakes.Select(m => m.ToString()).Should().Equal("gym.yaml:" + expected);
    }

    [Fact]
    public void All_mistakes_are_told_at_once() =>
        GymFile.Read(Rich.Replace("count: 2", "count: none", StringComparison.Ordinal).Replace("27 mm", "27", StringComparison.Ordinal).Replace("0.8 kg", "x", StringComparison.Ordinal), "gym.yaml")
            .Mistakes.Select(m => m.Line).Should().Equal(13, 19, 33);

    private static GymKit Kit(string text) => GymFile.Read(text, "gym.yaml").OrThrow().Kit;
}
