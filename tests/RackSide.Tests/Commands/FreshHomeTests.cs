using System.Text.Json;
using RackSide.Files;

namespace RackSide.Tests.Commands;

public class FreshHomeTests
{
    private const string Monday = "2026-11-02T18:00";

    [Theory]
    [InlineData("today")]
    [InlineData("today --json")]
    [InlineData("summary")]
    [InlineData("summary --week 2026-W40")]
    [InlineData("history squat")]
    [InlineData("plates 62.5")]
    [InlineData("check")]
    [InlineData("--version")]
    [InlineData("--help")]
    public void A_command_that_reads_makes_nothing_on_disk(string line)
    {
        using var home = new PassingFolder();

        CommandLine.At(home.Path, Monday).Run(line).Code.Should().Be(0);

        home.Entries.Should().BeEmpty();
    }

    [Fact]
    public void A_folder_that_is_not_there_yet_is_not_made()
    {
        using var home = new PassingFolder();
        var folder = Path.Combine(home.Path, "gym");

        CommandLine.At(home.Path, Monday).RunWords("today", "--data", folder).Code.Should().Be(0);

        Directory.Exists(folder).Should().BeFalse();
    }

    [Fact]
    public void Today_shows_a_newcomers_first_day_and_says_how_to_join()
    {
        using var home = new PassingFolder();

        var ran = CommandLine.At(home.Path, Monday).Run("today");

        ran.Error.ReplaceLineEndings(" ").Should().Be(
            "rackside: nobody has joined yet; start rackside to set up. This is for a newcomer with a default kit. ");
        ran.Lines.Should().StartWith("Mon 2 Nov 2026: Strength day, about 73 min")
            .And.Contain("Barbell back squat                   5x5        20 kg");
    }

    [Fact]
    public void A_newcomer_who_answered_no_question_is_kept_from_head_down_work()
    {
        using var home = new PassingFolder();

        var plan = home.File("plan.yaml", """
            name: Wall practice
            week: { wednesday: skills-day }
            days:
              skills-day:
                name: Skills day
                kind: skills
                slots:
                  - { key: wall, motion: vertical_push, exercises: [wall-handstand-hold, standing-wall-reach], sets: 3, hold: 10-60 s, rest: 90 s }
            """);

        var today = CommandLine.At(home.Path, "2026-11-04T18:00").RunWords("today", "--plan", plan);

        today.Lines[0].Should().Contain("Skills day");
        today.Out.Should().NotContain("handstand").And.Contain("Standing overhead reach at the wall");
    }

    [Fact]
    public void Json_has_no_lifter_where_nobody_has_joined()
    {
        using var home = new PassingFolder();

        var today = JsonDocument.Parse(CommandLine.At(home.Path, Monday).Run("today --json").Out).RootElement;

        today.GetProperty("lifter").ValueKind.Should().Be(JsonValueKind.Null);
    }

    [Fact]
    public void A_lifter_asked_for_where_nobody_has_joined_is_a_mistake()
    {
        using var home = new PassingFolder();

        var ran = CommandLine.At(home.Path, Monday).Run("today --lifter Ottoline");

        ran.ErrorLines.Should().Equal("rackside: --lifter: nobody has joined yet, so there is no \"Ottoline\"; start rackside without it");
        ran.Code.Should().Be(64);
    }
}

public class BrokenFileTests
{
    private const string Broken = """
        unit: stone
        training_days: [monday, tuesday]
        bars:
          - name: bar
            mass: heavy
        plates: {}
        """;

    [Theory]
    [InlineData("today")]
    [InlineData("summary")]
    [InlineData("history squat")]
    [InlineData("plates 60")]
    public void A_broken_gym_yaml_is_told_all_at_once_by_line_with_78(string line)
    {
        using var folder = new PassingFolder();
        var file = folder.File("gym.yaml", Broken);

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").Run(line);

        (ran.Code, ran.Out).Should().Be((78, ""));
        ran.ErrorLines.Should().HaveCount(3);
        ran.ErrorLines.Zip([1, 2, 5]).Should().OnlyContain(e => e.First.StartsWith($"rackside: {file}:{e.Second}: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_tells_a_broken_gym_yaml_and_goes_on_past_it()
    {
        using var folder = new PassingFolder();
        var file = folder.File("gym.yaml", Broken);

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").Run("check");

        ran.Code.Should().Be(78);
        ran.Lines.Where(l => l.StartsWith("gym.yaml  broken", StringComparison.Ordinal)).Should().HaveCount(3)
            .And.Contain(l => l.Contains($"{file}:1: unit: \"stone\" is not a unit of mass; write kg or lb", StringComparison.Ordinal));
        ran.Lines.Should().Contain(l => l.StartsWith("terminal  ok", StringComparison.Ordinal));
    }

    [Fact]
    public void A_broken_plan_is_told_all_at_once_with_65()
    {
        using var folder = new PassingFolder();
        var text = PlanFile.DefaultText.Replace("reps: 5\n", "reps: five\n", StringComparison.Ordinal).Replace("rest: 60 s", "rest: a while", StringComparison.Ordinal);
        var file = folder.File("plan.yaml", text);
        var lines = text.Split('\n').Select((l, i) => (Text: l, Number: i + 1))
            .Where(l => l.Text.Trim() is "reps: five" or "rest: a while").ToList();

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").RunWords("plan", "check", file);

        (ran.Code, ran.Out).Should().Be((65, ""));
        ran.ErrorLines.Should().HaveCount(lines.Count).And.HaveCountGreaterThan(2);
        ran.ErrorLines.Zip(lines).Should().OnlyContain(e => e.First.StartsWith($"{file}:{e.Second.Number}: ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_good_plan_is_told_in_one_line()
    {
        using var folder = new PassingFolder();
        var file = folder.File("plan.yaml", PlanFile.DefaultText);

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").RunWords("plan", "check", file);

        (ran.Code, ran.Error).Should().Be((0, ""));
        ran.Lines.Should().Equal($"{file}: ok, \"Two strength days and a skills day\", 3 training days a week");
    }

    [Theory]
    [InlineData("plan check nowhere.yaml")]
    [InlineData("today --plan nowhere.yaml")]
    [InlineData("check --plan nowhere.yaml")]
    public void A_plan_that_is_not_there_is_told_with_66(string line)
    {
        using var folder = new PassingFolder();

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").Run(line);

        (ran.Out + ran.Error).Should().Contain("nowhere.yaml: there is no such file; check the name and the folder");
        ran.Code.Should().Be(66);
    }

    [Fact]
    public void A_file_that_is_no_logbook_is_told_with_74()
    {
        using var folder = new PassingFolder();
        folder.File("log.db", "shopping list");

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").Run("today");

        ran.ErrorLines.Should().ContainSingle().Which.Should().Contain("is not a RackSide logbook, or is damaged");
        (ran.Code, ran.Out).Should().Be((74, ""));
    }
}
