using RackSide.Logbook.Copies;

namespace RackSide.Logbook.Tests;

/// <summary>Backups: verified after writing, thinned by days, weeks and months within a limit of room.</summary>
public sealed class BackupTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("backups-").FullName;
    private readonly RecordedDisk disk = new();
    private readonly RecordedDisk kept = new();
    private readonly Scribe scribe = new(() => 0);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_backup_holds_all_that_was_acknowledged_and_is_for_its_owner_only()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 7);
        var place = Path.Combine(folder, "deep", "stick");

        var name = new Backups(place).Make(book.Snapshot(), Tollbooth.Wednesday);

        name.Should().Be("logbook-2026-03-04.db");
        var file = new FileInfo(Path.Combine(place, name));
        var back = LogbookSnapshot.Of(file);
        back.Sessions("ottoline").Single().Facts.Should().Equal(book.Sessions("ottoline").Single().Facts);
        back.Counts.Should().Be(new LogbookCounts(1, 1, 7, 1, 0, book.Sessions("ottoline").Single().Date));
        back.Counts.Should().Be(book.Snapshot().Counts);
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(file.FullName).Should().Be(UnixFileMode.UserRead | UnixFileMode.UserWrite);
            File.GetUnixFileMode(place).Should().Be(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void It_also_holds_what_only_the_journal_could_take()
    {
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            scribe.Train(book, 3);
        }

        using var full = LiteLogbook.Open(new FullDisk(disk, room: 0), Tollbooth.Evening);
        scribe.Train(full, 30);
        full.Trouble.Should().NotBeNull();

        full.Snapshot().Sessions("ottoline").Select(s => s.Facts.Count).Should().Equal(3, 30);
    }

    [Fact]
    public void A_second_backup_of_a_date_stands_beside_the_first_until_the_rotation()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        var backups = new Backups(kept);
        backups.Make(book.Snapshot(), Tollbooth.Wednesday);
        scribe.Train(book, 2);

        backups.Make(book.Snapshot(), Tollbooth.Wednesday).Should().Be("logbook-2026-03-04-2.db");

        backups.Rotate(book.Snapshot(), Tollbooth.Wednesday, long.MaxValue);
        kept.Names().Should().Equal("logbook-2026-03-04-3.db");
    }

    [Fact]
    public void A_disk_that_fills_while_a_backup_is_written_keeps_the_old_ones_and_no_half_one()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 2);
        new Backups(kept).Make(book.Snapshot(), Tollbooth.Wednesday);

        var act = () => new Backups(new FullDisk(kept, room: 20_000)).Rotate(book.Snapshot(), Tollbooth.Wednesday.PlusDays(1), long.MaxValue);

        act.Should().Throw<IOException>().WithMessage("no backup could be written to * (No space left on device)");
        kept.Names().Should().Equal("logbook-2026-03-04.db");
    }

    [Fact]
    public void A_backup_that_does_not_read_back_never_gets_its_name()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 2);

        var act = () => new Backups(new LyingDisk(kept)).Make(book.Snapshot(), Tollbooth.Wednesday);

        act.Should().Throw<IOException>().WithMessage("*does not read back as it was written*");
        kept.Names().Should().BeEmpty();
    }

    [Fact]
    public void A_power_cut_while_backups_rotate_leaves_whole_ones_only()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 2);
        var backups = new Backups(kept);
        backups.Rotate(book.Snapshot(), Tollbooth.Wednesday, long.MaxValue);
        var before = kept.Calls.Count;
        for (var day = 0; day < 9; day++)
        {
            backups.Rotate(book.Snapshot(), Tollbooth.Wednesday.PlusDays(day), long.MaxValue);
        }

        foreach (var (calls, kind) in from calls in Enumerable.Range(before, kept.Calls.Count - before) from kind in Enum.GetValues<LossKind>() select (calls, kind))
        {
            var left = kept.Crash(calls, new Loss(kind, 512, new Random(calls)));
            var whole = left.Names().Where(n => BackupName.Of(n) is not null).ToList();
            whole.Should().NotBeEmpty();
            whole.Should().OnlyContain(n => LogbookSnapshot.Read(left[n], n).Counts == book.Snapshot().Counts);
        }
    }

    [Fact]
    public void A_year_of_training_keeps_seven_days_four_weeks_and_twelve_months()
    {
        var all = new Dictionary<BackupName, long>();
        for (var date = new LocalDate(2025, 1, 1); date <= new LocalDate(2026, 3, 4); date = date.PlusDays(1))
        {
            var made = new BackupName(date, 1);
            all[made] = 100;
            var stay = Rotation.Stay(all, made, long.MaxValue);
            all.Keys.Where(b => !stay.Contains(b)).ToList().ForEach(b => all.Remove(b));
        }

        all.Keys.Order().Select(b => b.Date.ToString("uuuu-MM-dd", null)).Should().Equal(
            "2025-04-30", "2025-05-31", "2025-06-30", "2025-07-31", "2025-08-31", "2025-09-30", "2025-10-31", "2025-11-30", "2025-12-31", "2026-01-31",
            "2026-02-15", "2026-02-22", "2026-02-26", "2026-02-27", "2026-02-28", "2026-03-01", "2026-03-02", "2026-03-03", "2026-03-04");
    }

    [Fact]
    public void Three_days_a_week_keep_seven_days_of_training_and_a_lay_off_takes_none_away()
    {
        var all = Enumerable.Range(0, 12).Select(n => new BackupName(Tollbooth.Wednesday.PlusDays(-2 * n), 1)).ToDictionary(b => b, _ => 100L);
        var back = new BackupName(Tollbooth.Wednesday.PlusDays(200), 1);
        all[back] = 100;

        Rotation.Stay(all, back, long.MaxValue).Count(b => b.Date > Tollbooth.Wednesday.PlusDays(-12)).Should().Be(7);
    }

    [Fact]
    public void Beyond_the_limit_of_room_the_oldest_go_and_the_newest_stays_even_alone()
    {
        var all = Enumerable.Range(0, 5).Select(n => new BackupName(Tollbooth.Wednesday.PlusDays(n), 1)).ToDictionary(b => b, _ => 100L);
        var made = all.Keys.Max()!;

        Rotation.Stay(all, made, 250).Order().Select(b => b.Date).Should().Equal(made.Date.PlusDays(-1), made.Date);
        Rotation.Stay(all, made, 1).Should().Equal(made);
    }

    [Fact]
    public void A_backup_dated_years_ahead_by_a_wrong_clock_does_not_take_the_place_of_the_one_just_made()
    {
        var ahead = new BackupName(new LocalDate(2099, 1, 1), 1);
        var made = new BackupName(Tollbooth.Wednesday, 1);

        Rotation.Stay(new Dictionary<BackupName, long> { [ahead] = 100, [made] = 100 }, made, 100).Should().Equal(made);
    }

    [Theory]
    [InlineData("logbook-2026-03-04.db", 1)]
    [InlineData("logbook-2026-03-04-12.db", 12)]
    [InlineData("logbook-2026-03-04-1.db", null)]
    [InlineData("logbook-2026-03-04.db.tmp", null)]
    [InlineData("logbook-2026-13-04.db", null)]
    [InlineData("logbook-.db", null)]
    [InlineData("before-restore-2026-03-04.db", null)]
    public void Only_a_name_of_its_own_is_a_backup(string name, int? number) => BackupName.Of(name)?.Number.Should().Be(number);

    [Theory]
    [InlineData("spilled coffee", "is no RackSide backup, or is damaged")]
    [InlineData(null, "cannot be read")]
    public void A_file_that_is_none_is_told(string? text, string sentence)
    {
        var file = new FileInfo(Path.Combine(folder, "logbook-2026-03-04.db"));
        if (text is not null)
        {
            File.WriteAllText(file.FullName, text);
        }

        var act = () => LogbookSnapshot.Of(file);

        act.Should().Throw<LogbookUnreadableException>().WithMessage($"*{sentence}*");
    }
}
