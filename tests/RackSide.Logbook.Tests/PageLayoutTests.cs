using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>The engine's page layout is what the two-phase streams rest on: another version must fail here first.</summary>
public class PageLayoutTests
{
    [Fact]
    public void A_commit_ends_in_one_byte_and_a_sync_after_a_synced_page_without_it()
    {
        var disk = new RecordedDisk();
        var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        var before = disk.Calls.Count;

        book.Keep(Tollbooth.Ottoline);

        var node = disk.Node(FileNames.WriteAhead);
        var calls = disk.Calls.Skip(before).Where(c => c is Call.Wrote w ? w.Node == node : c is Call.Synced s && s.Node == node).ToList();
        var byOne = calls[^2].Should().BeOfType<Call.Wrote>().Subject;
        byOne.Bytes.Should().Equal(1);
        (byOne.At % TwoPhaseStream.Page).Should().Be(TwoPhaseStream.Confirmed);
        calls[^1].Should().BeOfType<Call.Synced>();
        calls[^3].Should().BeOfType<Call.Synced>();
        var page = calls[^4].Should().BeOfType<Call.Wrote>().Subject;
        page.At.Should().Be(byOne.At - TwoPhaseStream.Confirmed);
        page.Bytes.Should().HaveCount(TwoPhaseStream.Page);
        page.Bytes[TwoPhaseStream.Confirmed].Should().Be(0);
        calls.OfType<Call.Wrote>().SkipLast(1).Should().OnlyContain(w => w.Bytes[TwoPhaseStream.Confirmed] == 0);
    }

    [Fact]
    public void The_journal_is_synced_before_the_engine_is_asked_to_write()
    {
        var disk = new RecordedDisk();
        var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        var before = disk.Calls.Count;

        book.Keep(Tollbooth.Ottoline);

        var journal = disk.Node(FileNames.Journal);
        disk.Calls[before].Should().BeOfType<Call.Wrote>().Which.Node.Should().Be(journal);
        disk.Calls[before + 1].Should().Be(new Call.Synced(journal));
    }

    [Fact]
    public void Settling_costs_two_syncs_however_many_sets_wait()
    {
        var disk = new RecordedDisk();
        var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        for (var n = 1; n <= 5; n++)
        {
            book.Append(head.Id, Tollbooth.Set(book.NextId(), n));
        }

        var before = disk.Calls.Count;
        book.Settle();

        disk.Calls.Skip(before).OfType<Call.Synced>().Should().HaveCount(2).And.OnlyContain(s => s.Node == disk.Node(FileNames.WriteAhead));
    }
}
