using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Forecasting;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Commands;

/// <summary>Choosing a plan, and those there are to choose.</summary>
[Collection(nameof(Tollbooth))]
public class PlanChoiceTests(Tollbooth gym)
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    private static readonly NodaTime.LocalDate Monday = new(2026, 1, 5);

    public static TheoryData<string> Shipped => [.. ShippedPlans.Names];

    [Fact]
    public void A_plan_chosen_is_trained_by_from_then_on_and_the_loads_go_on()
    {
        using var copy = gym.Copy();
        CommandLine Here() => CommandLine.In(copy.Path, "2026-11-13T18:00");
        var before = Here().Run("history back-squat").Out;

        var used = Here().Run("plan use two-days");

        used.Code.Should().Be(0);
        used.Lines[0].Should().Be("Ottoline Marsh trains by \"Two days a week\" from here on; loads go on from the");
        Here().Run("plan list").Lines.Should().Contain("  Ottoline Marsh: two-days").And.Contain(l => l.StartsWith("  two-days ", StringComparison.Ordinal));
        Here().Run("history back-squat").Out.Should().Be(before, "a plan changed leaves the logbook as it is");
        Here().Run("today").Out.Should().Contain("day, about", "the day is one of the new plan").And.NotContain("Skills day");
        Here().Run($"plan check {Path.Combine(copy.Path, "plans", "two-days.yaml")}").Code.Should().Be(0);

        Here().Run("plan use built-in").Code.Should().Be(0);
        Here().Run("plan list").Lines.Should().Contain("  Ottoline Marsh: built-in");
    }

    [Fact]
    public void A_plan_named_on_the_command_line_goes_before_the_one_chosen()
    {
        using var copy = gym.Copy();
        using var elsewhere = new PassingFolder();
        var plan = elsewhere.File("other.yaml", PlanFile.DefaultText.Replace("name: Skills day", "name: Easy day", StringComparison.Ordinal));
        CommandLine Here() => CommandLine.In(copy.Path, "2026-11-11T18:00");
        Here().Run("plan use two-days").Code.Should().Be(0);

        Here().RunWords("today", "--plan", plan).Lines[0].Should().Contain("Easy day");
    }

    [Fact]
    public void A_file_from_elsewhere_is_copied_and_a_different_one_of_that_name_is_kept()
    {
        using var copy = gym.Copy();
        using var elsewhere = new PassingFolder();
        CommandLine Here() => CommandLine.In(copy.Path, "2026-11-13T18:00");
        var there = Path.Combine(copy.Path, "plans", "mine.yaml");

        Here().RunWords("plan", "use", elsewhere.File("mine.yaml", PlanFile.DefaultText)).Code.Should().Be(0);
        var again = Here().RunWords("plan", "use", elsewhere.File("mine.yaml", ShippedPlans.Text("two-days")));

        File.ReadAllText(there).Should().Be(PlanFile.DefaultText);
        (again.Code, again.ErrorLines[0]).Should().Be((64, $"rackside: {there} is there already and says something else; rename your file, or change that one"));
        Here().RunWords("plan", "use", elsewhere.File("bad.yaml", "name: Bad\n")).Code.Should().Be(65);
        Here().Run("plan use nowhere.yaml").Code.Should().Be(66);
        Here().Run("plan list").Lines.Should().Contain("  Ottoline Marsh: mine", "what cannot be used changes nothing");
    }

    [Fact]
    public void A_chosen_plan_that_cannot_be_read_any_more_is_told_and_the_built_in_one_stands_in()
    {
        using var copy = gym.Copy();
        CommandLine Here() => CommandLine.In(copy.Path, "2026-11-11T18:00");
        Here().Run("plan use dumbbells").Code.Should().Be(0);
        File.WriteAllText(Path.Combine(copy.Path, "plans", "dumbbells.yaml"), "name: Broken\n");

        var today = Here().Run("today");

        (today.Code, today.Lines[0]).Should().Be((0, "Wed 11 Nov 2026: Skills day, about 32 min, for Ottoline Marsh"));
        today.ErrorLines[0].Should().StartWith("rackside: Ottoline Marsh's plan dumbbells cannot be used");
        Here().Run("plan list").Lines.Should().Contain("  dumbbells           has mistakes: rackside plan check tells them");
    }

    // The kits that the plans' own comments speak of; what is told beside that is explained in the comments.
    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_plan_that_ships_asks_for_every_motion_and_leaves_no_slot_empty_in_its_kit(string name)
    {
        var (plan, file) = (ShippedPlans.Read(name, Catalogue), Path.Combine(AppContext.BaseDirectory, "Reference", "kits", $"{name}.yaml"));
        var kit = File.Exists(file) ? KitFile.ReadFrom(file).OrThrow() : KitDefaults.For(MassUnit.Kilogram);
        var loads = new KitLoads(kit);
        var trial = PlanTrial.Of(plan, Catalogue, Monday, 20, [.. Enumerable.Range(0, 4).Select(i => TrialYear.Live(plan, Catalogue, loads, Monday, 20, new Random(i).NextDouble))]);

        var doubts = PlanDoubts.Of(plan, Catalogue, kit, trial, NodaTime.Duration.FromMinutes(75));

        doubts.Should().OnlyContain(d => d.StartsWith("steps over 10 %", StringComparison.Ordinal) || d.StartsWith("no harder load", StringComparison.Ordinal) || d.EndsWith("(no cable stack)", StringComparison.Ordinal));
        ShippedPlans.Text(name).Should().Contain("steps over 10 %").And.Contain("ask a clinician");
    }
}
