using NodaTime;
using RackSide.Commands;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Tests.Commands;

[Collection(nameof(Tollbooth))]
public class CheckTests(Tollbooth gym)
{
    [Fact]
    public void It_tells_where_everything_is_and_that_all_is_well()
    {
        var ran = gym.On(11).Run("check");

        (ran.Code, ran.Error).Should().Be((0, ""));
        ran.Lines.Should().HaveCount(6).And.OnlyContain(l => l.Substring(10, 3) == "ok ");
        ran.Lines[0].Should().Be($"folder    ok       {gym.Folder}, decided by RACKSIDE_DATA");
        ran.Lines[1].Should().EndWith("gym.yaml: unit kilogram, Monday, Wednesday, Friday");
        ran.Lines[2].Should().Be("plan      ok       built in: \"Two strength days and a skills day\", 3 training days a week");
        ran.Lines[3].Should().Be("logbook   ok       1 lifter, 4 sessions");
        ran.Lines[4].Should().StartWith("clock     ok       2026-11-11 18:00");
        ran.Lines[5].Should().Be("terminal  ok       output goes elsewhere, so only plain text is printed; TERM is xterm-256color, colours on");
    }

    [Fact]
    public void The_flag_is_named_where_it_decided_and_no_color_is_seen()
    {
        using var home = new PassingFolder();
        var ran = CommandLine.At(home.Path, "2026-11-11T18:00").With("NO_COLOR", "1").RunWords("check", "--data", gym.Folder);

        ran.Lines[0].Should().EndWith("decided by --data");
        ran.Lines[^1].Should().EndWith("colours off by NO_COLOR");
    }

    [Fact]
    public void A_logbook_open_elsewhere_is_a_trouble_among_the_rest()
    {
        using var elsewhere = LiteLogbook.Open(gym.Folder, Instant.FromUtc(2026, 11, 11, 18, 0));

        var ran = gym.On(11).Run("check");

        ran.Code.Should().Be(75);
        ran.Lines[3].Should().StartWith("logbook   trouble  The logbook in");
        ran.Lines.Should().HaveCount(6);
    }

    [Fact]
    public void A_clock_before_the_last_session_is_a_trouble()
    {
        var ran = gym.On(3).Run("check");

        ran.Lines[4].Should().StartWith("clock     trouble  2026-11-03 18:00").And.EndWith("before the last session in the logbook; set the clock first");
        ran.Code.Should().Be(78);
    }

    [Fact]
    public void A_test_hook_that_cannot_be_read_is_a_trouble_too()
    {
        var ran = CommandLine.In(gym.Folder, "noon").Run("check");

        ran.Lines[4].Should().StartWith("clock     trouble  RACKSIDE_CLOCK: \"noon\" is not a time");
        ran.Code.Should().Be(64);
    }

    [Fact]
    public void A_file_where_the_folder_should_be_is_a_trouble()
    {
        using var folder = new PassingFolder();
        var file = folder.File("gym", "");

        var ran = CommandLine.At(folder.Path, "2026-11-11T18:00").RunWords("check", "--data", file);

        ran.Lines[0].Should().Be($"folder    trouble  {file} is a file; name a folder with --data");
        ran.Code.Should().Be(73);
    }

    [Fact]
    public void Training_days_that_do_not_fit_the_plan_are_told()
    {
        using var folder = new PassingFolder();
        folder.File("gym.yaml", GymFile.Write(new HouseRules(KitDefaults.For(MassUnit.Kilogram), [IsoDayOfWeek.Tuesday], Sound: true)));

        CommandLine.In(folder.Path, "2026-11-11T18:00").Run("check").Lines[2]
            .Should().EndWith("gym.yaml has 1 training day, so the plan's own are kept: Monday, Wednesday, Friday");
    }

    [Fact]
    public void The_size_of_a_terminal_is_told()
    {
        using var output = new StringWriter();
        using var folder = new PassingFolder();

        Entry.Run(["check", "--data", folder.Path], new Surroundings(_ => null, output, TextWriter.Null) { TerminalSize = () => (80, 24) });

        output.ToString().TrimEnd().Should().EndWith("terminal  ok       TERM is not set, 80x24, colours on");
    }

    [Fact]
    public void What_opening_the_logbook_mended_is_told()
    {
        using var folder = new PassingFolder();
        using (var begun = LiteLogbook.Open(folder.Path, Instant.FromUtc(2026, 11, 1, 18, 0)))
        {
            begun.Keep(new Lifter("first", "Bram Okafor-Lind", MassUnit.Pound, Instant.FromUtc(2026, 11, 1, 18, 0)));
        }

        folder.File("log.db", "spilled coffee");

        var ran = CommandLine.In(folder.Path, "2026-11-02T18:00").Run("check");

        ran.Lines[3].Should().StartWith("logbook   ok       1 lifter, 0 sessions. The log file was damaged; it was rebuilt");
    }
}
