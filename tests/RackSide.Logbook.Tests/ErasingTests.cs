using System.Text;

namespace RackSide.Logbook.Tests;

/// <summary>A lifter erased: the bytes are gone from every file, and everybody else's are there.</summary>
public class ErasingTests
{
    private static readonly string[] Traces = ["Bram Okafor-Lind", "bram"];
    private readonly RecordedDisk disk = new();
    private readonly RecordedDisk kept = new();

    [Fact]
    public void No_file_holds_a_byte_of_it_afterwards_and_the_others_are_whole()
    {
        Household();
        disk["log.bad-2026-03-01"] = Encoding.ASCII.GetBytes("half a page of bram");
        disk["log.journal.tmp"] = Encoding.ASCII.GetBytes("bram");
        kept["before-restore-2026-03-01.db"] = disk[FileNames.Copy];
        kept["logbook-2026-02-01.db"] = Encoding.ASCII.GetBytes("a torn backup of bram");
        kept["holiday.txt"] = Encoding.ASCII.GetBytes("not ours");
        Holding(disk).Should().Contain(FileNames.Main, "the check can fail").And.Contain(FileNames.Copy);
        Holding(kept).Should().HaveCount(3);

        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            var report = book.Erase("bram", kept);

            report.Rewritten.Should().Be(2);
            report.Deleted.Should().BeEquivalentTo("log.bad-2026-03-01", "logbook-2026-02-01.db");
        }

        Holding(disk).Should().BeEmpty();
        Holding(kept).Should().BeEmpty();
        kept.Names().Should().BeEquivalentTo("logbook-2026-03-04.db", "before-restore-2026-03-01.db", "holiday.txt");
        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Report.Sentence.Should().BeNull();
        again.Lifters().Should().Equal(Tollbooth.Ottoline);
        again.Sessions("ottoline").Single().Facts.Should().HaveCount(2);
        LogbookSnapshot.Read(kept["logbook-2026-03-04.db"], "kept").Sessions("ottoline").Single().Facts.Should().HaveCount(2);
    }

    [Fact]
    public void A_logbook_whose_window_was_killed_is_settled_before_and_keeps_nothing_in_its_journal()
    {
        Household();
        var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        book.Weigh("bram", Tollbooth.Wednesday.PlusDays(1), Mass.Lb(191));
        var killed = disk.Clone();
        Holding(killed).Should().Contain(FileNames.Journal, "the check can fail");

        using (var next = LiteLogbook.Open(killed, Tollbooth.Evening))
        {
            next.Erase("bram", backups: null).Rewritten.Should().Be(0);
        }

        Holding(killed).Should().BeEmpty();
    }

    [Fact]
    public void A_power_cut_leaves_a_logbook_that_opens_with_the_others_whole_and_can_be_erased_again()
    {
        Household();
        int start;
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            start = disk.Calls.Count;
            book.Erase("bram", backups: null);
        }

        foreach (var (calls, kind) in from calls in Enumerable.Range(start, disk.Calls.Count - start + 1) from kind in Enum.GetValues<LossKind>() select (calls, kind))
        {
            var left = disk.Crash(calls, new Loss(kind, 512, new Random(calls)));
            using (var book = LiteLogbook.Open(left, Tollbooth.Evening))
            {
                book.Report.Lost.Should().Be(0);
                book.Sessions("ottoline").Single().Facts.Should().HaveCount(2);
                book.Erase("bram", backups: null);
            }

            Holding(left).Should().BeEmpty($"{calls} calls, {kind}");
        }
    }

    private static IEnumerable<string> Holding(RecordedDisk disk) =>
        disk.Names().Where(n => Traces.Any(t => disk[n].AsSpan().IndexOf(Encoding.UTF8.GetBytes(t)) >= 0));

    private void Household()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        book.Keep(Tollbooth.Ottoline);
        book.Keep(Tollbooth.Bram);
        foreach (var lifter in new[] { "ottoline", "bram" })
        {
            var head = Tollbooth.Head(book.NextId(), lifter);
            book.Begin(head);
            book.Append(head.Id, Tollbooth.Set(book.NextId(), 1));
            book.Append(head.Id, Tollbooth.Set(book.NextId(), 2));
        }

        book.Weigh("bram", Tollbooth.Wednesday, Mass.Lb(190));
        book.Tell("bram", new AwayTold(book.NextId(), Tollbooth.Evening, Tollbooth.Wednesday, null, AwayFor.Holiday));
        new Backups(kept).Make(book.Snapshot(), Tollbooth.Wednesday);
    }
}
