using RackSide.Logbook.Copies;

namespace RackSide.Logbook.Tests;

/// <summary>Another logbook in the place of one: a backup that is restored, or the same without a lifter.</summary>
public class ReplacingTests
{
    private readonly RecordedDisk disk = new();
    private readonly Scribe scribe = new(() => 0);

    [Fact]
    public void A_restored_backup_is_what_is_there_afterwards_and_no_identity_is_given_twice()
    {
        LogbookSnapshot old;
        FactId given;
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            scribe.Train(book, 4);
            old = book.Snapshot();
            scribe.Train(book, 2);
            given = book.NextId();
            book.ReplaceBy(old);
            FluentActions.Invoking(book.Lifters).Should().Throw<ObjectDisposedException>();
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);

        again.Report.Should().Be(again.Report with { Condition = Condition.Sound, Lost = 0, Sentence = null });
        again.Snapshot().Counts.Should().Be(old.Counts);
        again.Sessions("ottoline").Single().Facts.Should().Equal(old.Sessions("ottoline").Single().Facts);
        again.NextId().Rack.Should().NotBe(given.Rack);
        scribe.Train(again, 3);
    }

    [Fact]
    public void A_power_cut_while_one_is_put_in_place_leaves_the_old_or_the_new()
    {
        LogbookCounts before, after;
        int start;
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            scribe.Train(book, 4);
            var old = book.Snapshot();
            scribe.Train(book, 2);
            (before, after, start) = (book.Snapshot().Counts, old.Counts, disk.Calls.Count);
            book.ReplaceBy(old);
        }

        var left = new List<LogbookCounts>();
        foreach (var (calls, kind) in from calls in Enumerable.Range(start, disk.Calls.Count - start + 1) from kind in Enum.GetValues<LossKind>() select (calls, kind))
        {
            using var book = LiteLogbook.Open(disk.Crash(calls, new Loss(kind, 512, new Random(calls))), Tollbooth.Evening);
            book.Report.Lost.Should().Be(0, $"{calls} calls, {kind}");
            left.Add(book.Snapshot().Counts);
        }

        left.Distinct().Should().BeEquivalentTo([before, after]);
        left[^1].Should().Be(after);
    }

    [Fact]
    public void A_full_disk_leaves_the_old_one_as_it_was()
    {
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            scribe.Train(book, 4);
        }

        var full = LiteLogbook.Open(new FullDisk(disk, room: 30_000), Tollbooth.Evening);
        var act = () => full.ReplaceBy(full.Snapshot());
        act.Should().Throw<IOException>();

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Report.Condition.Should().Be(Condition.Sound);
        scribe.Missing(again).Should().Be(0);
    }

    [Fact]
    public void Facts_that_no_disk_took_can_be_put_on_top_once()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        var (first, second) = (Tollbooth.Set(book.NextId(), 1), Tollbooth.Set(book.NextId(), 2));
        book.Append(head.Id, first);

        var more = book.Snapshot().With([new SessionEntry.Added(head.Id, first), new SessionEntry.Added(head.Id, second)]);

        more.Open("ottoline")!.Facts.Should().Equal(first, second);
        LogbookSnapshot.Read(more.Image, "more").Open("ottoline")!.Facts.Should().Equal(first, second);
        book.Open("ottoline")!.Facts.Should().Equal(first);
    }
}
