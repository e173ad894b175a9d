using NodaTime.Testing;
using RackSide.Logbook.Storing;
using RackSide.Training.Racks;

namespace RackSide.Logbook.Tests;

/// <summary>The logbook as one of several: what waits to be sent and how far the gym was taken survive what sets survive.</summary>
public class SharingTests
{
    private const int SmallJournal = 8 * 1024;

    private static readonly FactId Elsewhere = new("rstvwx", HybridClock.Reading(Tollbooth.Evening));

    [Fact]
    public void An_event_is_read_back_from_its_line_as_it_was_written() =>
        Gens.GymEvent.Sample(e => Same.Are(GymEventText.Read(GymEventText.Write(e)), e), iter: 2000);

    [Fact]
    public void Every_power_cut_leaves_a_set_both_written_and_waiting_or_neither_and_what_came_with_how_far()
    {
        var disk = new RecordedDisk();
        List<(int After, FactId Id)> told = [];
        List<(int After, long Position, FactId Id)> came = [];
        using (var book = Joined(disk))
        {
            var session = Begin(book);
            told.Add((disk.Calls.Count, session));
            for (var n = 1; n <= 12; n++)
            {
                var set = Tollbooth.Set(book.NextId(), n);
                book.Append(session, set);
                told.Add((disk.Calls.Count, set.Id));
                if (n % 3 == 0)
                {
                    book.Settle();
                    var one = new OutsideFact("first-x", new SoreTold(Elsewhere with { Sequence = Elsewhere.Sequence + n }, Tollbooth.Evening, Tollbooth.Wednesday, Training.Exercises.Motion.Squat));
                    book.Pull([one], n);
                    came.Add((disk.Calls.Count, n, one.Id));
                }
            }
        }

        for (var n = 0; n < 300; n++)
        {
            var chance = new Random(n);
            var calls = chance.Next(disk.Calls.Count + 1);
            var left = disk.Crash(calls, new Loss(Enum.GetValues<LossKind>()[n % Enum.GetValues<LossKind>().Length], 512, chance));
            using var book = LiteLogbook.Open(left, Tollbooth.Evening, SmallJournal);
            var waiting = book.Waiting(int.MaxValue).Select(w => w.Event.Id).ToList();
            var written = book.Lifters().SelectMany(l => book.Sessions(l.Key)).SelectMany(s => s.Facts.Select(f => f.Id).Prepend(s.Head.Id)).ToList();

            waiting.Should().BeEquivalentTo(written.Intersect(told.Select(t => t.Id)), $"{calls} calls, {n}");
            told.Where(t => t.After <= calls).Select(t => t.Id).Should().BeSubsetOf(waiting, "acknowledged");
            var position = book.Share.Pulled;
            position.Should().BeGreaterThanOrEqualTo(came.Where(c => c.After <= calls).Select(c => c.Position).DefaultIfEmpty().Max());
            book.Told("first-x").Select(f => f.Id).Should().Equal(came.Where(c => c.Position <= position).Select(c => c.Id));
        }
    }

    [Fact]
    public void A_log_that_is_damaged_is_made_anew_with_what_waits_and_how_far_it_came()
    {
        var disk = new RecordedDisk();
        using (var book = Joined(disk))
        {
            Begin(book);
            book.Pull([], 41);
        }

        disk[FileNames.Main] = new byte[20_000];
        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);

        again.Report.Condition.Should().Be(Condition.Rebuilt);
        again.Waiting(9).Should().ContainSingle();
        again.Share.Should().BeEquivalentTo(new { Joined = true, Pulled = 41L });
    }

    [Fact]
    public void A_backup_and_a_snapshot_say_how_the_rack_stands_and_a_rack_alone_has_no_document_of_it()
    {
        var disk = new RecordedDisk();
        using (var book = Joined(disk))
        {
            Begin(book);
            book.Snapshot().Share.Should().Be(book.Share);
        }

        var alone = new RecordedDisk();
        using (var book = LiteLogbook.Open(alone, Tollbooth.Evening))
        {
            book.Keep(Tollbooth.Ottoline);
            book.Share.Should().BeEquivalentTo(new { Joined = false, Waits = false });
            book.NextId().Sequence.Should().Be(1, "a rack alone counts one by one");
        }

        Engines.Image(new Contents("x")).AsSpan().IndexOf("racks"u8).Should().Be(-1);
        alone[FileNames.Main].AsSpan().IndexOf("racks"u8).Should().Be(-1);
    }

    [Fact]
    public void Facts_that_come_before_their_session_wait_for_it()
    {
        var disk = new RecordedDisk();
        var head = Tollbooth.Head(Elsewhere, "first-x");
        var (early, late) = (Tollbooth.Set(Elsewhere with { Sequence = Elsewhere.Sequence + 2 }, 2), Tollbooth.Set(Elsewhere with { Sequence = Elsewhere.Sequence + 1 }, 1));
        using (var book = Joined(disk))
        {
            book.Pull([new SessionFact("first-x", head.Id, early)], 1);
            book.Pull([new SessionFact("first-x", head.Id, early), new SessionFact("first-x", head.Id, late)], 2);
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Sessions("first-x").Should().BeEmpty();
        again.Pull([new SessionStarted(head)], 3);

        again.Sessions("first-x").Should().ContainSingle().Which.Facts.Select(f => f.Id).Should().Equal(late.Id, early.Id);
    }

    [Fact]
    public void Another_racks_clock_that_is_years_ahead_casts_no_doubt_on_this_ones()
    {
        using var book = Joined(new RecordedDisk());
        var years = Tollbooth.Evening + Duration.FromDays(2000);
        Begin(book);
        book.Pull([new OutsideFact("first-x", new SoreTold(new FactId("rstvwx", HybridClock.Reading(years)), years, Tollbooth.Wednesday, Training.Exercises.Motion.Squat))], 1);

        book.LastEntry.Should().Be(Tollbooth.Evening);
        book.NextId().Sequence.Should().BeGreaterThan(HybridClock.Reading(years), "what is told next stands after what was seen");
    }

    private static LiteLogbook Joined(RecordedDisk disk)
    {
        var book = LiteLogbook.Open(disk, Tollbooth.Evening, SmallJournal);
        book.Clock = new FakeClock(Tollbooth.Evening);
        book.Keep(Tollbooth.Ottoline);
        book.Join("the-tollbooth");
        book.SentWhole(null);
        return book;
    }

    private static FactId Begin(LiteLogbook book)
    {
        var head = Tollbooth.Head(book.NextId(), book.Lifters()[0].Key) with { Begun = Tollbooth.Evening };
        book.Begin(head);
        return head.Id;
    }
}
