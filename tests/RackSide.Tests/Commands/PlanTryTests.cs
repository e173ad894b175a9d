using System.Runtime.CompilerServices;
using System.Text.Json;
using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Forecasting;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Commands;

/// <summary>A plan tried on invented lifters.</summary>
public class PlanTryTests
{
    private const string Clock = "2026-11-25T18:00";

    private static readonly LocalDate Monday = new(2026, 1, 5);

    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    // A lift, a dumbbell lift with coarse steps and a hold, twice a week.
    private const string Small = """
        name: Small
        week: {monday: a, thursday: a}
        days:
          a:
            name: Short day
            kind: strength
            slots:
              - {key: squat, motion: squat, exercises: [back-squat], sets: 5, reps: 5, rest: 2 min, ramp: full}
              - {key: curl, motion: elbow_flexion, exercises: [db-curl], sets: 3, reps: 8-12, rest: 60 s}
              - {key: plank, motion: core_brace, exercises: [plank-forearm], sets: 3, hold: 20-60 s, rest: 60 s}
        """;

    [Fact]
    public void The_plan_that_comes_with_the_program_tried_on_twelve_lifters()
    {
        using var home = new PassingFolder();
        var expected = Path.Combine(Path.GetDirectoryName(Here())!, "plan-try.txt");

        var ran = CommandLine.At(home.Path, Clock).RunWords("plan", "try", home.File("plan.yaml", PlanFile.DefaultText), "--lifters", "12", "--seed", "7");

        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(expected, ran.Out.ReplaceLineEndings("\n"));
        }

        ran.Code.Should().Be(0);
        ran.Out.ReplaceLineEndings("\n").Should().Be(File.ReadAllText(expected), "where the change is meant, run with RACKSIDE_ACCEPT=1");
        ran.Lines.Should().OnlyContain(l => l.Length <= 80);
        home.Entries.Should().ContainSingle("it makes nothing on disk");
    }

    [Fact]
    public void For_a_program_it_tells_every_month_and_the_same_seed_tells_the_same()
    {
        using var home = new PassingFolder();
        var plan = home.File("plan.yaml", Small);
        string Tried(string seed) => CommandLine.At(home.Path, Clock).RunWords("plan", "try", plan, "--lifters", "3", "--seed", seed, "--json").Out;

        var first = JsonDocument.Parse(Tried("1")).RootElement;

        first.GetProperty("lifts")[0].GetProperty("months").GetArrayLength().Should().Be(12);
        first.GetProperty("assumes").GetArrayLength().Should().BePositive();
        Tried("1").Should().Be(first.GetRawText() + Environment.NewLine).And.NotBe(Tried("2"));
    }

    [Theory]
    [InlineData("plan try FILE --lifters none", 64, "--lifters: \"none\" will not do; write 1 to 1000, such as 200")]
    [InlineData("plan try FILE --lifters 1001", 64, "--lifters: \"1001\" will not do; write 1 to 1000, such as 200")]
    [InlineData("plan try FILE --seed -1", 64, "--seed: \"-1\" will not do; write 0 to 1000000, such as 1")]
    [InlineData("plan try FILE --minutes 5", 64, "--minutes: \"5\" will not do; write 10 to 240, such as 75")]
    [InlineData("plan try FILE --kit nowhere.yaml", 66, "nowhere.yaml: there is no such file; check the name and the folder")]
    [InlineData("plan try FILE --kit KIT", 65, "KIT:2: mass: \"20\" is not a mass; write a number and kg or lb, such as 2.5 kg or 45 lb")]
    [InlineData("plan try nowhere.yaml", 66, "nowhere.yaml: there is no such file; check the name and the folder")]
    [InlineData("plan try BROKEN", 65, "BROKEN:8: sets: \"0\" is outside 1 to 10; write a whole number, such as 3")]
    public void What_cannot_be_tried_is_told_in_one_sentence(string line, int code, string sentence)
    {
        using var home = new PassingFolder();
        var names = new Dictionary<string, string>
        {
            ["FILE"] = home.File("plan.yaml", Small),
            ["BROKEN"] = home.File("broken.yaml", Small.Replace("sets: 5", "sets: 0", StringComparison.Ordinal)),
            ["KIT"] = home.File("kit.yaml", "unit: kg\nbars: [{name: bar, mass: 20}]\nplates: {10 kg: 1}\n"),
        };
        string With(string text) => names.Aggregate(text, (t, name) => t.Replace(name.Key, name.Value, StringComparison.Ordinal));

        var ran = CommandLine.At(home.Path, Clock).RunWords(With(line).Split(' '));

        (ran.Code, ran.Out).Should().Be((code, ""));
        ran.ErrorLines.Should().Contain($"rackside: {With(sentence)}");
    }

    [Fact]
    public void A_kit_of_pounds_is_read_from_house_rules_and_its_loads_are_told()
    {
        using var home = new PassingFolder();
        var rules = GymFile.Write(new HouseRules(KitDefaults.For(MassUnit.Pound), [IsoDayOfWeek.Monday, IsoDayOfWeek.Thursday], Sound: true));

        var ran = CommandLine.At(home.Path, Clock).RunWords(
            "plan", "try", home.File("plan.yaml", Small), "--kit", home.File("gym.yaml", rules), "--lifters", "2");

        ran.Code.Should().Be(0);
        ran.Lines.Should().Contain(l => l.StartsWith("back squat", StringComparison.Ordinal) && l.Contains(" lb", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_load_used_can_be_loaded_and_nobody_trains_two_days_running()
    {
        var (plan, kit) = (Read(Small), KitDefaults.For(MassUnit.Kilogram));
        var loads = new KitLoads(kit);

        for (var seed = 0; seed < 4; seed++)
        {
            var life = TrialYear.Live(plan, Catalogue, loads, Monday, 26, new Random(seed).NextDouble);

            life.SelectMany(s => s.Slots).Where(s => s.Load is not null).Should().OnlyContain(s => loads.For(Catalogue[s.Asked.Exercise])!.Has(s.Load!.Value));
            life.Zip(life.Skip(1)).Should().OnlyContain(pair => Period.DaysBetween(pair.First.Date, pair.Second.Date) > 1);
        }
    }

    [Fact]
    public void Sets_minutes_and_sessions_are_those_that_the_plan_adds_up_to()
    {
        // By hand: two sessions a week, some of them put off; 3 sets of curls in each. A curl's set is for the biceps.
        var trial = Tried(Read(Small), KitDefaults.For(MassUnit.Kilogram), lifters: 12);

        trial.SessionsAWeek.Should().BeInRange(2 * (1 - TrialYear.Missed), 2);
        trial.SetsAWeek.Single(s => s.Group == MuscleGroup.Biceps).Sets.Should().BeApproximately(3 * trial.SessionsAWeek, 0.2);
        trial.Minutes.Should().ContainSingle().Which.Minutes.Middle.Should().BeInRange(25, 32, "5 sets with 160 s, 3 with 100 s and 3 with 100 s make 23 min, and the ramp comes on top");
        trial.Lifts.SelectMany(l => l.Months).Should().OnlyContain(m => m.Low <= m.Middle && m.Middle <= m.High);
        trial.Practice.Should().ContainSingle().Which.First.Should().Be(new TrialAim(Catalogue["plank-forearm"], 20, InSeconds: true));
    }

    [Fact]
    public void Doubts_are_told_of_pattern_kit_time_and_what_is_left_out()
    {
        var plan = Read(Small);
        var kit = KitDefaults.For(MassUnit.Kilogram);
        var row = plan with { Week = new Dictionary<IsoDayOfWeek, string> { [IsoDayOfWeek.Monday] = "a", [IsoDayOfWeek.Tuesday] = "a" } };

        Doubts(row, kit).Should().Contain("two strength days in a row: put a day of rest between them");
        Doubts(plan, kit).Should().NotContain(d => d.Contains("in a row", StringComparison.Ordinal))
            .And.Contain("no slot asks for a horizontal pull")
            .And.Contain("no set trains the chest")
            .And.Contain(d => d.StartsWith("steps over 10 % at once, for a lifter in ten or more: ", StringComparison.Ordinal) && d.Contains("curl 2.5 kg to 5 kg", StringComparison.Ordinal))
            .And.Contain(d => d.StartsWith("Short day takes ", StringComparison.Ordinal) && d.EndsWith(" of 20 there are", StringComparison.Ordinal));
        Doubts(plan, kit with { Dumbbells = [], Equipment = new HashSet<string>() }).Should()
            .Contain(d => d.StartsWith("Short day: curl: nothing here for dumbbell curl", StringComparison.Ordinal));
        Doubts(Read(Small.Replace("back-squat], sets: 5, reps: 5", "pike-push-up], sets: 3, reps: 5", StringComparison.Ordinal).Replace("motion: squat", "motion: vertical_push", StringComparison.Ordinal)), kit with { Dumbbells = [], Equipment = new HashSet<string>(["mat"]) })
            .Should().Contain(d => d.StartsWith("Short day: squat is never done", StringComparison.Ordinal));
    }

    private static IReadOnlyList<string> Doubts(Plan plan, GymKit kit) =>
        PlanDoubts.Of(plan, Catalogue, kit, Tried(plan, kit, lifters: 6), Duration.FromMinutes(20));

    private static PlanTrial Tried(Plan plan, GymKit kit, int lifters)
    {
        var loads = new KitLoads(kit);
        return PlanTrial.Of(plan, Catalogue, Monday, 26, [.. Enumerable.Range(0, lifters).Select(i => TrialYear.Live(plan, Catalogue, loads, Monday, 26, new Random(i).NextDouble))]);
    }

    private static Plan Read(string text) => PlanFile.Read(text, "plan.yaml", Catalogue).OrThrow();

    private static string Here([CallerFilePath] string here = "") => here;
}
