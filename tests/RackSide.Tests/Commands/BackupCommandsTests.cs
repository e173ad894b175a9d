using System.Text;
using System.Text.Json;
using NodaTime;
using RackSide.Arrivals;
using RackSide.Logbook;

namespace RackSide.Tests.Commands;

/// <summary>Backups, restoring, the record and erasing, in copies of the Tollbooth's folder.</summary>
[Collection(nameof(Tollbooth))]
public sealed class BackupCommandsTests : IDisposable
{
    private readonly PassingFolder home;

    public BackupCommandsTests(Tollbooth gym) => home = gym.Copy();

    public void Dispose() => home.Dispose();

    [Fact]
    public void A_backup_says_where_it_is_and_what_it_holds()
    {
        var ran = On(11).Run("backup");

        var file = Path.Combine(home.Path, "backups", "logbook-2026-11-11.db");
        (ran.Code, ran.Error).Should().Be((0, ""));
        ran.Lines.Should().Equal($"{file}: 1 lifter, 4 sessions, {Sets} sets, 1 weigh-in, newest Mon 9 Nov 2026; read back and found whole");
        LogbookSnapshot.Of(new FileInfo(file)).Counts.Sessions.Should().Be(4);
    }

    [Fact]
    public void A_command_that_writes_leaves_a_backup_and_one_that_reads_leaves_none()
    {
        On(11).Run("today").Code.Should().Be(0);
        Directory.Exists(Path.Combine(home.Path, "backups")).Should().BeFalse();

        On(11).Run("sore squat").Code.Should().Be(0);
        On(11).Run("sore squat --take-back").Code.Should().Be(0);
        On(13).Run("sore squat").Code.Should().Be(0);

        Names().Should().Equal("logbook-2026-11-11-2.db", "logbook-2026-11-13.db");
    }

    [Theory]
    [InlineData("off", 0)]
    [InlineData("1 MB", 1)]
    public void The_house_rules_say_how_much_room_backups_may_take(string room, int backups)
    {
        File.AppendAllText(Path.Combine(home.Path, "gym.yaml"), "\n");
        var rules = File.ReadAllText(Path.Combine(home.Path, "gym.yaml"));
        rules.Should().Contain("backups: 64 MB");
        home.File("gym.yaml", rules.Replace("backups: 64 MB", $"backups: {room}", StringComparison.Ordinal));

        On(11).Run("sore squat").Code.Should().Be(0);

        Names().Should().HaveCount(backups);
    }

    [Fact]
    public void A_backup_is_made_from_copy_and_journal_while_the_screen_is_open()
    {
        using var elsewhere = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 11, 18, 0));

        var ran = On(11).Run("backup");

        ran.Code.Should().Be(0);
        ran.Error.Should().StartWith("rackside: the logbook is open in another window");
        ran.Lines[0].Should().Contain("4 sessions");
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_told_with_73()
    {
        var file = home.File("stick", "");

        var ran = On(11).RunWords("backup", file);

        (ran.Code, ran.Out).Should().Be((73, ""));
        ran.ErrorLines.Should().ContainSingle().Which.Should().EndWith("name another folder, such as one on a USB stick");
    }

    [Fact]
    public void Restoring_shows_what_it_changes_asks_and_keeps_the_old_one()
    {
        var backup = Backup();
        On(12).Run("sore squat").Code.Should().Be(0);
        On(12).Run("redate 2026-11-09 2026-11-10").Code.Should().Be(0);
        var program = On(13).Answering("y");

        var ran = program.RunWords("restore", backup);

        ran.Code.Should().Be(0);
        program.Asked.Should().Equal("Put it in the logbook's place? [y/N] ");
        ran.Out.ReplaceLineEndings("\n").Should().Be($"""
            {string.Join('\n', RackSide.Commands.PlainText.Wrap($"the logbook: 1 lifter, 4 sessions, {Sets} sets, 1 weigh-in, newest Tue 10 Nov 2026"))}
            {string.Join('\n', RackSide.Commands.PlainText.Wrap($"{backup}: 1 lifter, 4 sessions, {Sets} sets, 1 weigh-in, newest Mon 9 Nov 2026"))}
            restoring it would leave:
              1 entry told outside sessions fewer: 0, not 1
              the newest session is of Mon 9 Nov 2026, not of Tue 10 Nov 2026
              with fewer entries than here: Tue 10 Nov 2026
            restored: 1 lifter, 4 sessions, {Sets} sets, 1 weigh-in, newest Mon 9 Nov 2026
            the old one is kept as {Path.Combine(home.Path, "backups", "before-restore-2026-11-13.db")}

            """.ReplaceLineEndings("\n"));
        On(13).Run("redate").Out.Should().Contain("Mon 9 Nov 2026").And.NotContain("at first");

        On(13).RunWords("restore", Path.Combine(home.Path, "backups", "before-restore-2026-11-13.db"), "--yes").Code.Should().Be(0);
        On(13).Run("redate").Out.Should().Contain("Tue 10 Nov 2026  Strength day  (dated Mon 9 Nov 2026 at first)");
    }

    [Fact]
    public void A_backup_holds_the_house_rules_and_restoring_shows_them_asks_and_keeps_the_old_ones()
    {
        var (backup, then) = (Backup(), Rules());
        var now = then.Replace("backups: 64 MB", "backups: 10 MB", StringComparison.Ordinal);
        home.File("gym.yaml", now);
        var program = On(13).Answering("y");

        var ran = program.RunWords("restore", backup);

        ran.Code.Should().Be(0);
        program.Asked.Should().Equal("Put it in the logbook's place? [y/N] ", "Put its gym.yaml in place of the one here too? [y/N] ");
        ran.Out.Should().Contain("the backup's gym.yaml is another than the one here").And.Contain("- backups: 10 MB").And.Contain("+ backups: 64 MB");
        ran.Out.ReplaceLineEndings(" ").Should().Contain($"the old one is kept as {Path.Combine(home.Path, "gym.yaml")}.old");
        Rules().Should().Be(then);
        File.ReadAllText(Path.Combine(home.Path, "gym.yaml.old")).Should().Be(now);
        Encoding.UTF8.GetString(LogbookSnapshot.Of(new FileInfo(Path.Combine(home.Path, "backups", "before-restore-2026-11-13.db"))).HouseRules!).Should().Be(now);
    }

    [Fact]
    public void House_rules_that_are_gone_come_back_with_the_backup()
    {
        var (backup, then) = (Backup(), Rules());
        File.Delete(Path.Combine(home.Path, "gym.yaml"));

        var ran = On(13).RunWords("restore", backup, "--yes");

        ran.Out.ReplaceLineEndings(" ").Should().Contain("the backup holds a gym.yaml, and here is none: it comes back").And.Contain("gym.yaml is back: ");
        Rules().Should().Be(then);
    }

    [Fact]
    public void House_rules_stay_where_that_is_asked_for_and_where_those_of_the_backup_have_mistakes()
    {
        var (backup, then) = (Backup(), Rules());
        var now = then.Replace("backups: 64 MB", "backups: 10 MB", StringComparison.Ordinal);
        home.File("gym.yaml", now);

        On(13).RunWords("restore", backup, "--yes", "--logbook-only").Code.Should().Be(0);
        Rules().Should().Be(now);

        var broken = Path.Combine(home.Path, "broken");
        new Backups(broken).Make(LogbookSnapshot.Of(new FileInfo(backup)).WithHouseRules("unit: stones"u8.ToArray()), new LocalDate(2026, 11, 12));
        var ran = On(13).RunWords("restore", Path.Combine(broken, "logbook-2026-11-12.db"), "--yes");

        ran.Code.Should().Be(0);
        ran.Out.ReplaceLineEndings(" ").Should().Contain("the backup's gym.yaml has mistakes and stays in the backup: its gym.yaml");
        Rules().Should().Be(now);
    }

    [Fact]
    public void A_command_that_the_backups_house_rules_would_have_run_is_shown()
    {
        home.File("gym.yaml", Rules().Replace("alarm_command: []", "alarm_command: [ring, the, bell]", StringComparison.Ordinal));
        var backup = Backup();
        home.File("gym.yaml", Rules().Replace("[ring, the, bell]", "[]", StringComparison.Ordinal));

        On(13).Answering("").RunWords("restore", backup).Out.Should().Contain("it has this run when a rest ends: ring the bell");
    }

    [Fact]
    public void Sessions_that_would_go_are_named_before_the_question()
    {
        var backup = Backup();
        using (var book = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 11, 18, 0)))
        {
            book.Begin(book.Sessions("first")[0].Head with { Id = book.NextId(), Date = new LocalDate(2026, 11, 11) });
        }

        var ran = On(11).Answering("").RunWords("restore", backup);

        ran.Code.Should().Be(0);
        ran.Out.Should().Contain("  1 session fewer: 4, not 5").And.Contain("  not in the backup, so gone from the logbook: Wed 11 Nov 2026");
        ran.Lines[^1].Should().Be("nothing was changed");
        LogbookCounts().Sessions.Should().Be(5);
    }

    [Fact]
    public void Nobody_there_to_ask_is_told_with_64_and_nothing_changes()
    {
        var ran = On(11).RunWords("restore", Backup());

        ran.Code.Should().Be(64);
        ran.ErrorLines.Should().Equal("rackside: restore: this is asked about first, and nobody is here to answer; add --yes if you are sure");
    }

    [Theory]
    [InlineData("nowhere.db", 66, "nowhere.db: there is no such file; check the name and the folder")]
    [InlineData("gym.yaml", 65, "is no RackSide backup, or is damaged. Nothing was changed.")]
    public void A_file_that_is_no_backup_is_told(string name, int code, string sentence)
    {
        var ran = On(11).RunWords("restore", Path.Combine(home.Path, name), "--yes");

        (ran.Code, ran.Out).Should().Be((code, ""));
        ran.Error.Should().Contain(sentence);
    }

    [Fact]
    public void A_logbook_that_cannot_be_opened_is_put_aside_and_the_backup_takes_its_place()
    {
        var backup = Backup();
        home.File("log.db", "spilled coffee");
        home.File("copy.db", "more of it");
        On(11).Run("today").Code.Should().Be(74);

        var ran = On(12).Answering("y").RunWords("restore", backup);

        ran.Code.Should().Be(0);
        ran.Out.Should().Contain("the backup: 1 lifter, 4 sessions").And.Contain($"kept as {Path.Combine(home.Path, "log.db.bad-2026-11-12")}");
        File.ReadAllText(Path.Combine(home.Path, "log.db.bad-2026-11-12")).Should().Be("spilled coffee");
        LogbookCounts().Sessions.Should().Be(4);
        On(12).Run("today").Error.Should().BeEmpty();
    }

    [Fact]
    public void Restoring_and_erasing_wait_until_the_screen_is_closed()
    {
        var backup = Backup();
        using var elsewhere = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 11, 18, 0));

        On(11).RunWords("restore", backup, "--yes").Code.Should().Be(75);
        On(11).RunWords("erase", "Ottoline", "--yes").Code.Should().Be(75);
    }

    [Fact]
    public void The_record_is_json_for_its_owner_only_and_reads_back()
    {
        var file = Path.Combine(home.Path, "record.json");

        var ran = On(11).RunWords("export", file, "--lifter", "Ottoline");

        (ran.Code, ran.Out).Should().Be((0, ""));
        ran.Error.ReplaceLineEndings(" ").Should().Contain($"4 sessions, {Sets} sets, 1 weigh-in");
        LogbookRecord.Read(File.ReadAllBytes(file)).Counts.Should().Be(LogbookCounts());
        JsonDocument.Parse(On(11).Run("export").Out).RootElement.GetProperty("lifters")[0].GetProperty("name").GetString().Should().Be("Ottoline Marsh");
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(file).Should().Be(UnixFileMode.UserRead | UnixFileMode.UserWrite);
        }
    }

    [Fact]
    public void An_erased_lifter_is_gone_from_every_file()
    {
        Backup();
        On(12).Run("sore squat").Code.Should().Be(0);
        home.File(KeptPages.FileName, "a page with Ottoline's name on it");
        Holding().Should().HaveCountGreaterThan(4, "the check can fail").And.Contain(f => f.EndsWith(KeptPages.FileName, StringComparison.Ordinal));
        var program = On(13).Answering("yes");

        var ran = program.Run("erase ottoline marsh");

        ran.Code.Should().Be(0);
        program.Asked.Should().Equal("Erase Ottoline Marsh for good? [y/N] ");
        ran.Out.ReplaceLineEndings(" ").Should().StartWith("Ottoline Marsh: 4 sessions, 1 weigh-in, and what was told").And.Contain("erased: Ottoline Marsh; 2 backups rewritten");
        Holding().Should().BeEmpty();
        On(13).Run("today").Error.Should().Contain("nobody has joined yet");
    }

    [Theory]
    [InlineData("erase Bram", "erase: nobody here is called \"Bram\"; here train: Ottoline Marsh")]
    [InlineData("erase", "erase needs LIFTER; see rackside erase --help")]
    [InlineData("restore", "restore needs FILE; see rackside restore --help")]
    public void A_mistyped_line_is_told(string line, string sentence)
    {
        var ran = On(11).Run(line);

        ran.Code.Should().Be(64);
        ran.ErrorLines.Should().Equal($"rackside: {sentence}");
    }

    [Theory]
    [InlineData("backup")]
    [InlineData("export")]
    public void Where_there_is_no_logbook_it_is_told_and_nothing_is_made(string line)
    {
        using var empty = new PassingFolder();

        var ran = CommandLine.In(empty.Path, "2026-11-11T18:00").Run(line);

        (ran.Code, ran.Out).Should().Be((66, ""));
        ran.Error.Should().Contain("there is no logbook yet");
        empty.Entries.Should().BeEmpty();
    }

    private string Rules() => File.ReadAllText(Path.Combine(home.Path, "gym.yaml"));

    private int Sets => LogbookCounts().Sets;

    private CommandLine On(int day) => CommandLine.In(home.Path, $"2026-11-{day:00}T18:00");

    private string Backup()
    {
        On(11).Run("backup").Code.Should().Be(0);
        return Path.Combine(home.Path, "backups", "logbook-2026-11-11.db");
    }

    private LogbookCounts LogbookCounts()
    {
        using var book = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 11, 18, 0));
        return book.Snapshot().Counts;
    }

    private IEnumerable<string> Names() => Directory.Exists(Path.Combine(home.Path, "backups"))
        ? Directory.EnumerateFiles(Path.Combine(home.Path, "backups")).Select(f => Path.GetFileName(f)).Order()
        : [];

    private IEnumerable<string> Holding() => home.Entries.Where(File.Exists)
        .Where(f => File.ReadAllBytes(f).AsSpan().IndexOf(Encoding.UTF8.GetBytes("Ottoline")) >= 0);
}
