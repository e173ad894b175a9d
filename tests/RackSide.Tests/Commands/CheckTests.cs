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
        ran.Lines.Select(l => l[..10].TrimEnd()).Should().Equal("folder", "gym.yaml", "plan", "logbook", "copies", "room", "clock", "terminal", "font");
        ran.Lines.Where((_, i) => i != 4).Should().OnlyContain(l => l.Substring(10, 3) == "ok ");
        ran.Lines[0].Should().Be($"folder    ok       {gym.Folder}, decided by RACKSIDE_DATA");
        ran.Lines[1].Should().EndWith("gym.yaml: unit kilogram, Monday, Wednesday, Friday");
        ran.Lines[2].Should().Be("plan      ok       built in: \"Two strength days and a skills day\", 3 training days a week");
        ran.Lines[3].Should().Be("logbook   ok       1 lifter, 4 sessions");
        ran.Lines[4].Should().Be("copies    look     no backups yet; rackside backup makes one now");
        ran.Lines[5].Should().MatchRegex("^room +ok +[0-9]+ MB free$");
        ran.Lines[6].Should().StartWith("clock     ok       2026-11-11 18:00");
        ran.Lines[8].Should().Be("font      ok       these should be a block, a shade, a square and two lines: █ ░ ■ ─ │; if not, choose another font for this terminal or console");
        ran.Lines[7].Should().Be("terminal  ok       output goes elsewhere, so only plain text is printed; TERM is xterm-256color, colours on");
    }

    [Fact]
    public void The_flag_is_named_where_it_decided_and_no_color_is_seen()
    {
        using var home = new PassingFolder();
        var ran = CommandLine.At(home.Path, "2026-11-11T18:00").With("NO_COLOR", "1").RunWords("check", "--data", gym.Folder);

        ran.Lines[0].Should().EndWith("decided by --data");
        ran.Lines[^2].Should().EndWith("colours off by NO_COLOR");
    }

    [Fact]
    public void A_logbook_open_elsewhere_is_looked_at_by_its_copy()
    {
        using var elsewhere = LiteLogbook.Open(gym.Folder, Instant.FromUtc(2026, 11, 11, 18, 0));

        var ran = gym.On(11).Run("check");

        ran.Code.Should().Be(0);
        ran.Lines[3].Should().Be("logbook   ok       1 lifter, 4 sessions; open in another window, so this is from its copy and journal");
    }

    [Fact]
    public void A_backup_that_cannot_be_read_is_broken_and_named_and_an_old_one_is_looked_at()
    {
        using var copy = gym.Copy();
        CommandLine.In(copy.Path, "2026-11-04T18:00").Run("backup").Code.Should().Be(0);
        CommandLine.In(copy.Path, "2026-11-11T18:00").Run("check").Lines[4].Should().Be(
            "copies    look     1 backup, all whole, the newest of Wed 4 Nov 2026, which is before the last session; rackside backup makes one now");
        CommandLine.In(copy.Path, "2026-11-11T18:00").Run("backup").Code.Should().Be(0);
        CommandLine.In(copy.Path, "2026-11-11T18:00").Run("check").Lines[4].Should().Be("copies    ok       2 backups, all whole, the newest of Wed 11 Nov 2026");
        copy.File(Path.Combine("backups", "logbook-2026-11-04.db"), "worn out");

        var ran = CommandLine.In(copy.Path, "2026-11-11T18:00").Run("check");

        ran.Code.Should().Be(74);
        ran.Lines[4].Should().Be("copies    broken   logbook-2026-11-04.db: cannot be read; delete what cannot be read and make another with rackside backup");
    }

    [Fact]
    public void A_folder_others_may_enter_and_a_locale_without_UTF_8_are_looked_at_with_a_remedy()
    {
        using var copy = gym.Copy();
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        File.SetUnixFileMode(copy.Path, File.GetUnixFileMode(copy.Path) | UnixFileMode.GroupRead | UnixFileMode.GroupExecute);

        var ran = CommandLine.In(copy.Path, "2026-11-11T18:00").With("LANG", "de_DE.ISO-8859-1").Run("check");

        ran.Code.Should().Be(0);
        ran.Lines[0].Should().StartWith("folder    look").And.EndWith($"chmod 700 {copy.Path} keeps them out");
        ran.Lines[^1].Should().Be("font      look     LANG is de_DE.ISO-8859-1, which is not UTF-8; set LANG=C.UTF-8, or lines and blocks come out as other signs");
    }

    [Fact]
    public void Json_tells_the_same_with_states_and_remedies()
    {
        var found = System.Text.Json.JsonDocument.Parse(gym.On(3).Run("check --json").Out).RootElement.GetProperty("findings").EnumerateArray().ToList();

        found.Select(f => f.GetProperty("state").GetString()).Should().Equal("ok", "ok", "ok", "ok", "look", "ok", "broken", "ok", "ok");
        found[4].GetProperty("remedy").GetString().Should().Be("rackside backup makes one now");
    }

    [Fact]
    public void A_clock_before_the_last_session_is_a_trouble()
    {
        var ran = gym.On(3).Run("check");

        ran.Lines[6].Should().StartWith("clock     broken   2026-11-03 18:00").And.EndWith("before the last session in the logbook; set the clock first");
        ran.Code.Should().Be(78);
    }

    [Fact]
    public void A_test_hook_that_cannot_be_read_is_a_trouble_too()
    {
        var ran = CommandLine.In(gym.Folder, "noon").Run("check");

        ran.Lines[6].Should().StartWith("clock     broken   RACKSIDE_CLOCK: \"noon\" is not a time");
        ran.Code.Should().Be(64);
    }

    [Fact]
    public void A_file_where_the_folder_should_be_is_a_trouble()
    {
        using var folder = new PassingFolder();
        var file = folder.File("gym", "");

        var ran = CommandLine.At(folder.Path, "2026-11-11T18:00").RunWords("check", "--data", file);

        ran.Lines[0].Should().Be($"folder    broken   {file} is a file; name a folder with --data");
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

        output.ToString().Should().Contain("terminal  ok       TERM is not set, 80x24, colours on");
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
