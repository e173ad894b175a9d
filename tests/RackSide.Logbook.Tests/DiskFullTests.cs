namespace RackSide.Logbook.Tests;

/// <summary>A full disk: sets are still acknowledged from the journal, and whatever was acknowledged is there once space is free.</summary>
public class DiskFullTests
{
    private const int SmallJournal = 8 * 1024;

    private readonly RecordedDisk disk = new();
    private readonly Scribe scribe = new(() => 0);

    [Fact]
    public void Sets_are_kept_in_the_journal_and_shown_while_the_log_cannot_grow()
    {
        BeginNormally();
        var full = new FullDisk(disk, room: 0);
        using (var book = LiteLogbook.Open(full, Tollbooth.Evening))
        {
            var before = scribe.Count;

            scribe.Train(book, 30);

            scribe.Count.Should().Be(before + 33, "every write was acknowledged");
            scribe.Missing(book).Should().Be(0);
            book.Trouble.Should().Contain("No space left on device").And.Contain("Sets are kept in the journal");
        }

        using var freed = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Missing(freed).Should().Be(0);
        freed.Trouble.Should().BeNull();
        freed.Report.Lost.Should().Be(0);
    }

    [Fact]
    public void A_logbook_opens_while_the_disk_is_still_full()
    {
        BeginNormally();
        for (var turn = 0; turn < 3; turn++)
        {
            using var book = LiteLogbook.Open(new FullDisk(disk, room: 0), Tollbooth.Evening);
            scribe.Train(book, 4);
            scribe.Missing(book).Should().Be(0);
        }

        using var freed = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Missing(freed).Should().Be(0);
    }

    [Fact]
    public void Whenever_the_disk_fills_nothing_acknowledged_is_lost()
    {
        BeginNormally(SmallJournal);
        var (refused, troubled) = (0, 0);
        for (var room = 0; room < 700_000; room += 9_000)
        {
            var tried = disk.Clone();
            var own = new Scribe(() => 0);
            using (var book = LiteLogbook.Open(new FullDisk(tried, room), Tollbooth.Evening, SmallJournal))
            {
                own.Train(book, 20);
                own.Missing(book).Should().Be(0, $"{room} bytes were free");
                refused += own.Count < 23 ? 1 : 0;
                troubled += book.Trouble is null ? 0 : 1;
            }

            using var freed = LiteLogbook.Open(tried, Tollbooth.Evening);
            own.Missing(freed).Should().Be(0, $"{room} bytes were free");
            scribe.Missing(freed).Should().Be(0, $"{room} bytes were free");
        }

        refused.Should().BePositive("some of these disks fill before the journal can grow");
        troubled.Should().BePositive("some of these disks fill before the log can");
    }

    [Fact]
    public void A_journal_that_cannot_be_written_is_told_and_loses_nothing_before()
    {
        BeginNormally();
        var card = new FullDisk(disk, room: long.MaxValue);
        using (var book = LiteLogbook.Open(card, Tollbooth.Evening))
        {
            scribe.Train(book, 5);
            card.Dead = true;

            var act = () => book.Keep(Tollbooth.Bram);

            act.Should().Throw<IOException>().WithMessage("This could not be written*Nothing written before is lost.");
            book.Lifters().Should().ContainSingle();
            scribe.Missing(book).Should().Be(0);

            card.Dead = false;
            book.Keep(Tollbooth.Bram);
            card.Dead = true;
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Lifters().Should().HaveCount(2);
    }

    [Fact]
    public void A_new_logbook_on_a_full_disk_says_so()
    {
        var act = () => LiteLogbook.Open(new FullDisk(disk, room: 100), Tollbooth.Evening);

        act.Should().Throw<LogbookUnreadableException>().WithMessage("*No space left on device*Free some space*");
    }

    private void BeginNormally(int journalRoom = 64 * 1024)
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening, journalRoom);
        scribe.Train(book, 10);
    }
}
