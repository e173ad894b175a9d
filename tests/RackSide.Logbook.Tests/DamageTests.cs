using LiteDB;
using LiteDB.Engine;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Journals;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>Damaged, missing, cut and foreign files: everything acknowledged comes back, or opening says why it cannot.</summary>
public class DamageTests
{
    private const string Rebuilt =
        "The log file was damaged; it was rebuilt from the last copy and the journal. No set is lost. The broken file is kept as log.bad-2026-03-04.";

    private readonly Scribe scribe = new(() => 0);

    [Theory]
    [InlineData(FileNames.Main)]
    [InlineData(FileNames.WriteAhead)]
    [InlineData(FileNames.Journal)]
    [InlineData(FileNames.Copy)]
    public void Flipped_bytes_one_at_a_time_lose_no_acknowledged_write(string file)
    {
        var killed = KilledEvening();
        var length = file == FileNames.Journal ? 8_000 : killed[file].Length;
        var chance = new Random(5);

        var lost = Enumerable.Range(0, LongRun.Or(60, 500)).Where(_ =>
        {
            var disk = killed.Clone();
            var bytes = disk[file];
            bytes[chance.Next(length)] ^= (byte)(1 << chance.Next(8));
            disk[file] = bytes;
            return Lost(disk);
        }).ToList();

        lost.Should().BeEmpty();
    }

    [Fact]
    public void Flipped_bytes_in_a_log_at_rest_lose_no_acknowledged_write()
    {
        var rest = RestingEvening();
        var chance = new Random(6);

        var lost = Enumerable.Range(0, LongRun.Or(60, 500)).Where(_ =>
        {
            var disk = rest.Clone();
            var bytes = disk[FileNames.Main];
            bytes[chance.Next(bytes.Length)] ^= (byte)(1 << chance.Next(8));
            disk[FileNames.Main] = bytes;
            return Lost(disk);
        }).ToList();

        lost.Should().BeEmpty();
    }

    [Theory]
    [InlineData(FileNames.Main)]
    [InlineData(FileNames.WriteAhead)]
    [InlineData(FileNames.Journal)]
    [InlineData(FileNames.Copy)]
    public void One_file_missing_cut_or_foreign_loses_nothing(string file)
    {
        var killed = KilledEvening();
        foreach (var harm in Harms)
        {
            var disk = killed.Clone();
            Harm(disk, file, harm);

            Lost(disk).Should().BeFalse($"{file} was harmed: {harm}");
        }
    }

    [Fact]
    public void A_rebuilt_log_says_so_in_one_breath_and_keeps_the_broken_file()
    {
        var disk = RestingEvening();
        disk[FileNames.Main] = "Dear diary, today I"u8.ToArray();

        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);

        book.Report.Condition.Should().Be(Condition.Rebuilt);
        book.Report.Sentence.Should().Be(
            "The log file was damaged; it was rebuilt from the last copy and the journal. No set is lost. "
            + "The broken file is kept as log.bad-2026-03-04.");
        disk["log.bad-2026-03-04"].Should().Equal("Dear diary, today I"u8.ToArray());
        scribe.Missing(book).Should().Be(0);
    }

    [Theory]
    [InlineData(FileNames.Main, "cut in half", Rebuilt)]
    [InlineData(FileNames.Main, "zeroed tail", Rebuilt)]
    [InlineData(FileNames.Main, "zeros", Rebuilt)]
    [InlineData(FileNames.Main, "random", Rebuilt)]
    [InlineData(FileNames.Main, "long text", Rebuilt)]
    [InlineData(FileNames.Main, "missing", "The log file was missing; it was rebuilt from the last copy and the journal. No set is lost.")]
    [InlineData(FileNames.Copy, "missing", "The log's copy was missing and was made again; the log itself is whole.")]
    [InlineData(FileNames.Journal, "zeros", "The log's journal was unreadable and was begun again; the log itself is whole. Only if the disk was full last time, check the last session. The broken file is kept as journal.bad-2026-03-04.")]
    [InlineData(FileNames.Journal, "random", "The log's journal was unreadable and was begun again; the log itself is whole. Only if the disk was full last time, check the last session. The broken file is kept as journal.bad-2026-03-04.")]
    public void Each_damage_has_its_sentence_and_is_told_once(string file, string harm, string sentence)
    {
        var disk = RestingEvening();
        Harm(disk, file, harm);

        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            book.Report.Sentence.Should().Be(sentence);
            scribe.Missing(book).Should().Be(0);
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Report.Sentence.Should().BeNull();
    }

    [Fact]
    public void A_sector_that_cannot_be_read_is_mended_from_the_copy()
    {
        var disk = RestingEvening();

        using var book = LiteLogbook.Open(new UnreadableDisk(disk, FileNames.Main, new IOException("Input/output error")), Tollbooth.Evening);

        book.Report.Condition.Should().Be(Condition.Rebuilt);
        book.Report.Sentence.Should().Contain("No set is lost").And.Contain("kept as log.bad-2026-03-04");
        scribe.Missing(book).Should().Be(0);
    }

    [Theory]
    [InlineData(FileNames.Main)]
    [InlineData(FileNames.WriteAhead)]
    [InlineData(FileNames.Copy)]
    public void A_file_of_another_user_is_told_with_its_remedy_and_nothing_is_changed(string file)
    {
        var disk = RestingEvening();
        if (file == FileNames.Copy)
        {
            // The copy is looked into only where the log is not whole.
            Harm(disk, FileNames.Main, "text");
        }

        var (log, copy) = (disk[FileNames.Main], disk[FileNames.Copy]);
        var act = () => LiteLogbook.Open(new UnreadableDisk(disk, file, new UnauthorizedAccessException($"Access to {file} is denied."), atOnce: true), Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage("*belongs to another user*Nothing was changed. Start RackSide as its owner*chown*");
        disk[FileNames.Main].Should().Equal(log);
        disk[FileNames.Copy].Should().Equal(copy);
    }

    [Fact]
    public void A_lock_left_by_a_killed_window_holds_nobody_off()
    {
        var disk = KilledEvening();
        disk[FileNames.Lock] = "4711"u8.ToArray();

        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);

        book.Report.Sentence.Should().BeNull();
        scribe.Missing(book).Should().Be(0);
    }

    [Fact]
    public void A_log_at_rest_is_opened_by_its_register_and_a_changed_one_is_verified()
    {
        var disk = RestingEvening();
        LogFile.OpenAtRest(disk)!.Value.Log.Dispose();
        JournalReading.Of(disk[FileNames.Journal]).Mark!.IsOn(disk).Should().BeTrue();

        var bytes = disk[FileNames.Main];
        bytes[^1] ^= 1;
        disk[FileNames.Main] = bytes;

        JournalReading.Of(disk[FileNames.Journal]).Mark!.IsOn(disk).Should().BeFalse();
    }

    // The engine's transactions have finalizers that throw after some failures, and a finalizer that throws ends the
    // process: here that would be the test run's.
    [Fact]
    public void Damage_that_only_a_write_meets_ends_no_program_and_is_mended_at_the_next_opening()
    {
        var disk = RestingEvening();
        var bytes = disk[FileNames.Main];
        bytes[2 * TwoPhaseStream.Page] ^= 8;
        disk[FileNames.Main] = bytes;
        Train();

        GC.Collect();
        GC.WaitForPendingFinalizers();

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Report.Condition.Should().Be(Condition.Rebuilt);
        again.Report.Lost.Should().Be(0);
        again.Trouble.Should().BeNull();
        scribe.Missing(again).Should().Be(0);

        void Train()
        {
            using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
            scribe.Train(book, 3);
            book.Trouble.Should().Contain("(it is damaged). Sets are kept in the journal");
            scribe.Missing(book).Should().Be(0);
        }
    }

    [Theory]
    [InlineData(FileNames.Main, "random")]
    [InlineData(FileNames.Main, "missing")]
    [InlineData(FileNames.Journal, "long text")]
    [InlineData(FileNames.Copy, "missing")]
    public void A_power_cut_while_damage_is_mended_loses_nothing(string file, string harm)
    {
        var killed = KilledEvening();
        Harm(killed, file, harm);
        var disk = killed.Clone();
        var before = disk.Calls.Count;
        LiteLogbook.Open(disk, Tollbooth.Evening).Dispose();

        var lost =
            from calls in Enumerable.Range(before, disk.Calls.Count - before)
            from kind in Enum.GetValues<LossKind>()
            where Lost(disk.Crash(calls, new Loss(kind, 512, new Random(calls))))
            select (calls, kind);

        lost.Should().BeEmpty();
        disk.Calls.Count.Should().BeGreaterThan(before + 5);
    }

    [Fact]
    public void A_write_the_machine_stopped_in_is_told_once()
    {
        var disk = KilledEvening();
        var journal = disk[FileNames.Journal];
        var end = Enumerable.Range(0, journal.Length / 512).Last(s => journal[s * 512] != 0) * 512 + 512;
        journal[end] = 1;
        disk[FileNames.Journal] = journal;

        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            book.Report.Sentence.Should().Be(
                "One entry was still being written when RackSide stopped and is not in the log: check the last set.");
            scribe.Missing(book).Should().Be(0);
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Report.Sentence.Should().BeNull();
    }

    [Fact]
    public void A_second_broken_file_of_a_day_does_not_replace_the_first()
    {
        var disk = RestingEvening();
        foreach (var text in new[] { "one", "two" })
        {
            disk[FileNames.Main] = System.Text.Encoding.ASCII.GetBytes(text);
            LiteLogbook.Open(disk, Tollbooth.Evening).Dispose();
        }

        disk["log.bad-2026-03-04"].Should().Equal("one"u8.ToArray());
        disk["log.bad-2026-03-04-2"].Should().Equal("two"u8.ToArray());
    }

    [Fact]
    public void A_mended_journal_says_that_the_log_is_whole()
    {
        var disk = KilledEvening();
        disk.Remove(FileNames.Journal);

        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);

        book.Report.Condition.Should().Be(Condition.Mended);
        book.Report.Sentence.Should().Be(
            "The log's journal was missing and was begun again; the log itself is whole. "
            + "Only if the disk was full last time, check the last session.");
    }

    [Fact]
    public void Log_and_copy_both_damaged_is_said_and_changes_nothing()
    {
        var disk = RestingEvening();
        Harm(disk, FileNames.Main, "cut in half");
        Harm(disk, FileNames.Copy, "cut in half");
        var before = disk.Clone();

        var act = () => LiteLogbook.Open(disk, Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage("*log file is damaged and its copy is damaged. Nothing was changed.*");
        disk[FileNames.Main].Should().Equal(before[FileNames.Main]);
        disk[FileNames.Copy].Should().Equal(before[FileNames.Copy]);
        disk[FileNames.Journal].Should().Equal(before[FileNames.Journal]);
    }

    [Fact]
    public void Log_damaged_and_journal_gone_is_told_as_a_loss_that_nobody_can_count()
    {
        var disk = RestingEvening();
        Harm(disk, FileNames.Main, "random");
        disk.Remove(FileNames.Journal);

        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);

        book.Report.Lost.Should().BeNull();
        book.Report.Sentence.Should().Contain("may be lost: check the last session");
    }

    [Fact]
    public void Two_damaged_files_are_counted_and_the_rack_gets_a_new_name()
    {
        var killed = KilledEvening();
        string rack;
        using (var whole = LiteLogbook.Open(killed.Clone(), Tollbooth.Evening))
        {
            rack = whole.NextId().Rack;
        }

        // The journal's third sector on holds the writes since the copy; one of them goes with the log.
        var journal = killed[FileNames.Journal];
        journal[3 * 512 + 40] ^= 1;
        killed[FileNames.Journal] = journal;
        Harm(killed, FileNames.Main, "random");

        using var book = LiteLogbook.Open(killed, Tollbooth.Evening);

        book.Report.Lost.Should().BePositive();
        book.Report.Sentence.Should().Contain("could not be brought back");
        book.NextId().Rack.Should().NotBe(rack);
    }

    [Theory]
    [InlineData("empty")]
    [InlineData("text")]
    [InlineData("long text")]
    [InlineData("random")]
    public void A_foreign_file_alone_is_refused_and_left_as_it_is(string harm)
    {
        var disk = new RecordedDisk();
        disk[FileNames.Main] = [];
        Harm(disk, FileNames.Main, harm);
        var before = disk[FileNames.Main];

        var act = () => LiteLogbook.Open(disk, Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage("*not a RackSide logbook*");
        disk[FileNames.Main].Should().Equal(before);
    }

    [Fact]
    public void A_database_of_another_program_is_refused()
    {
        var disk = new RecordedDisk();
        using (var stream = new MemoryStream())
        {
            using (var engine = Engines.Open(stream, new MemoryStream()))
            {
                engine.Insert("birds", [new BsonDocument { ["name"] = "wren" }], BsonAutoId.ObjectId);
            }

            disk[FileNames.Main] = stream.ToArray();
        }

        var act = () => LiteLogbook.Open(disk, Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage("*not a RackSide logbook*");
    }

    [Fact]
    public void A_logbook_of_a_newer_RackSide_is_left_alone()
    {
        var disk = RestingEvening();
        using (var log = disk.Open(FileNames.Main))
        using (var ahead = disk.Open(FileNames.WriteAhead))
        using (var data = new TwoPhaseStream(log, writeAhead: false) { Writable = true })
        using (var writeAhead = new TwoPhaseStream(ahead, writeAhead: true) { Writable = true })
        using (var engine = Engines.Open(data, writeAhead))
        {
            var about = new About("k3f9pz", 1, 0, 0, 0, 0, 0).ToDocument();
            about["format"] = About.Format + 1;
            engine.Upsert(Collections.About, [Checksums.Seal(about)], BsonAutoId.Int64);
        }

        var before = disk[FileNames.Main];
        var act = () => LiteLogbook.Open(disk, Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage($"*newer RackSide (format {About.Format + 1}; this one reads up to {About.Format})*");
        disk[FileNames.Main].Should().Equal(before);
        act.Should().Throw<LogbookUnreadableException>("the lock was let go of, and the answer is the same");
    }

    private static readonly string[] Harms = ["missing", "empty", "text", "cut to 5000", "long text", "cut in half", "random", "zeros", "zeroed tail"];

    private static void Harm(RecordedDisk disk, string file, string harm)
    {
        var bytes = disk[file];
        if (harm == "missing")
        {
            disk.Remove(file);
            return;
        }

        disk[file] = harm switch
        {
            "empty" => [],
            "text" => "Dear diary, today"u8.ToArray(),
            "cut to 5000" => bytes[..Math.Min(5000, bytes.Length)],
            "long text" => [.. Enumerable.Repeat((byte)'x', 20_000)],
            "cut in half" => bytes[..(bytes.Length / 2)],
            "zeroed tail" => [.. bytes[..(bytes.Length / 2)], .. new byte[bytes.Length - (bytes.Length / 2)]],
            "random" => Bytes(Math.Max(bytes.Length, 20_000)),
            _ => new byte[Math.Max(bytes.Length, 20_000)],
        };

        static byte[] Bytes(int length)
        {
            var bytes = new byte[length];
            new Random(7).NextBytes(bytes);
            return bytes;
        }
    }

    // Two evenings closed, a third cut off by a kill: a copy, a journal and a write-ahead log that all hold something.
    private RecordedDisk KilledEvening()
    {
        var disk = RestingEvening();
        var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 9);
        return disk.Clone();
    }

    private RecordedDisk RestingEvening()
    {
        var disk = new RecordedDisk();
        foreach (var sets in new[] { 20, 8 })
        {
            using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
            scribe.Train(book, sets);
        }

        return disk.Clone();
    }

    private bool Lost(RecordedDisk disk)
    {
        for (var turn = 0; turn < 2; turn++)
        {
            using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
            if (scribe.Missing(book) > 0 || book.Report.Lost != 0)
            {
                return true;
            }

            book.Weigh("juno", Tollbooth.Wednesday.PlusDays(turn), Mass.Kg(60));
        }

        using var last = LiteLogbook.Open(disk, Tollbooth.Evening);
        return scribe.Missing(last) > 0 || last.WeighIns("juno").Count != 2;
    }
}
