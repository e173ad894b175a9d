using RackSide.Logbook.Storing;
using RackSide.Training.Exercises;
using RackSide.Training.Planning;

namespace RackSide.Logbook.Tests;

public class LogbookTests
{
    private readonly RecordedDisk disk = new();

    [Fact]
    public void What_was_written_is_there_at_once_and_after_opening_again()
    {
        SessionHead head;
        SetDone set;
        using (var book = Open())
        {
            book.Keep(Tollbooth.Ottoline);
            head = Tollbooth.Head(book.NextId());
            book.Begin(head);
            set = Tollbooth.Set(book.NextId());
            book.Append(head.Id, set);
            Check(book);
        }

        using var again = Open();
        Check(again);

        void Check(LiteLogbook book)
        {
            book.Lifters().Should().Equal(Tollbooth.Ottoline);
            var session = book.Sessions("ottoline").Should().ContainSingle().Subject;
            Same.Are(session.Head, head).Should().BeTrue();
            session.Facts.Should().Equal(set);
            book.Open("ottoline")!.Head.Id.Should().Be(head.Id);
            book.Sessions("bram").Should().BeEmpty();
        }
    }

    // Found by a kill between the two: opening copied the log before it had a journal to begin anew, and was refused its own file.
    [Fact]
    public void A_session_whose_end_is_in_the_journal_alone_is_opened_and_copied()
    {
        var book = Open();
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        book.Append(head.Id, new SessionClosed(book.NextId(), Tollbooth.Evening));
        var killed = disk.Clone();

        using var again = LiteLogbook.Open(killed, Tollbooth.Evening);

        again.Report.Sentence.Should().BeNull();
        again.Open("ottoline").Should().BeNull();
        again.Sessions("ottoline").Should().ContainSingle().Which.Closed.Should().BeTrue();
        LogbookSnapshot.Read(killed[FileNames.Copy], "copy.db").Sessions("ottoline").Should().ContainSingle().Which.Closed.Should().BeTrue();
    }

    // A head that any generator makes has no sets of its exercises, so here are some that count for records.
    [Fact]
    public void Cards_of_a_log_at_rest_are_those_of_its_sessions()
    {
        using (var book = Open())
        {
            foreach (var load in new[] { 60m, 62.5m, 47.125m })
            {
                var head = Tollbooth.Head(book.NextId());
                book.Begin(head);
                for (var n = 1; n <= 5; n++)
                {
                    book.Append(head.Id, Tollbooth.Set(book.NextId(), n, n) with { Load = Mass.Kg(load) });
                }
            }
        }

        LogFile.OpenAtRest(disk)!.Value.Log.Dispose();
        using var again = Open();
        var cards = again.Cards("ottoline");

        cards.Should().BeEquivalentTo(again.Sessions("ottoline").Select(LookBack.Card), o => o.WithStrictOrdering());
        cards[2].Loads.Should().Equal(Enumerable.Range(1, 5).Select(n => new RepLoad("squat", "back-squat", n, Mass.Kg(47.125m))));
        cards[2].Performed.Should().Equal(("squat", "back-squat"));
    }

    [Fact]
    public void Any_facts_in_any_order_come_back_in_the_order_written() =>
        Gen.Select(Gens.Head, Gens.Fact.List[1, 8]).Sample(
            (head, facts) =>
            {
                var fresh = new RecordedDisk();
                var told = facts.DistinctBy(f => f.Id).ToList();
                using (var book = LiteLogbook.Open(fresh, Tollbooth.Evening))
                {
                    book.Begin(head);
                    told.ForEach(f => book.Append(head.Id, f));
                }

                using var again = LiteLogbook.Open(fresh, Tollbooth.Evening);
                var session = again.Sessions(head.Lifter).Single();
                return Same.Are(session.Head, head) && session.Facts.Zip(told).All(p => Same.Are(p.First, p.Second))
                    && session.Facts.Count == told.Count;
            },
            iter: 60,
            threads: 1);

    [Fact]
    public void An_identity_is_never_given_twice_even_after_a_kill()
    {
        FactId last;
        var book = Open();
        var first = book.NextId();
        book.Begin(Tollbooth.Head(first));
        last = book.NextId();
        book.Append(first, Tollbooth.Set(last));
        var killed = disk.Crash(disk.Calls.Count, new Loss(LossKind.Kept, 1, new Random(1)));

        using var again = LiteLogbook.Open(killed, Tollbooth.Evening);

        first.Sequence.Should().Be(1);
        again.NextId().Should().Be(new FactId(last.Rack, last.Sequence + 1));
    }

    [Fact]
    public void A_set_is_on_disk_when_it_was_acknowledged()
    {
        var book = Open();
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        book.Append(head.Id, Tollbooth.Set(book.NextId()));
        var cut = disk.Crash(disk.Calls.Count, new Loss(LossKind.Dropped, 1, new Random(1)));

        using var again = LiteLogbook.Open(cut, Tollbooth.Evening);

        again.Open("ottoline")!.Sets.Should().ContainSingle();
        again.Report.Should().Be(again.Report with { Condition = Condition.Sound, Lost = 0, Sentence = null });
    }

    [Fact]
    public void An_accepted_set_costs_one_sync_and_lies_in_two_places_once_settled()
    {
        var book = Open();
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        var before = disk.Calls.Count;

        book.Append(head.Id, Tollbooth.Set(book.NextId()));

        disk.Calls.Skip(before).OfType<Call.Synced>().Should().ContainSingle().Which.Node.Should().Be(disk.Node(FileNames.Journal));
        disk.Calls.Skip(before).OfType<Call.Wrote>().Should().ContainSingle("nothing is written but its line of the journal");

        book.Settle();
        var left = disk.Crash(disk.Calls.Count, new Loss(LossKind.Dropped, 1, new Random(1)));
        left.Remove(FileNames.Journal);
        using var again = LiteLogbook.Open(left, Tollbooth.Evening);
        again.Open("ottoline")!.Sets.Should().ContainSingle("the log has it without the journal");
    }

    [Fact]
    public void Settling_with_nothing_to_settle_touches_nothing()
    {
        var book = Open();
        book.Begin(Tollbooth.Head(book.NextId()));
        var before = disk.Calls.Count;

        book.Settle();

        disk.Calls.Should().HaveCount(before);
        book.Dispose();
        book.Settle();
    }

    [Fact]
    public void The_newest_session_that_is_not_closed_is_the_open_one()
    {
        using var book = Open();
        var (older, newer) = (Tollbooth.Head(book.NextId()), Tollbooth.Head(book.NextId()));
        book.Begin(older);
        book.Begin(newer);
        book.Open("ottoline")!.Head.Id.Should().Be(newer.Id);

        book.Append(newer.Id, new SessionClosed(book.NextId(), Tollbooth.Evening));

        book.Open("ottoline")!.Head.Id.Should().Be(older.Id);
    }

    [Fact]
    public void Lifters_stand_in_the_order_they_joined_and_a_change_replaces()
    {
        using var book = Open();
        book.Keep(Tollbooth.Bram);
        book.Keep(Tollbooth.Ottoline);
        book.Keep(Tollbooth.Bram with { AvoidInverted = true });

        book.Lifters().Should().Equal(Tollbooth.Ottoline, Tollbooth.Bram with { AvoidInverted = true });
    }

    [Fact]
    public void The_body_weight_told_last_on_a_date_counts_wherever_it_was_told()
    {
        using var book = Open();
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        book.Weigh("ottoline", Tollbooth.Wednesday, Mass.Kg(70));
        book.Weigh("ottoline", Tollbooth.Wednesday.PlusDays(-1), Mass.Kg(69));
        var told = new BodyWeighed(book.NextId(), Tollbooth.Evening, Mass.Kg(71));
        book.Append(head.Id, told);
        Weights().Should().Equal(69, 71);

        book.Append(head.Id, new FactStruck(book.NextId(), Tollbooth.Evening, told.Id));
        Weights().Should().Equal(69, 70);

        book.Weigh("ottoline", Tollbooth.Wednesday, Mass.Kg(72));
        Weights().Should().Equal(69, 72);

        IEnumerable<decimal> Weights() => book.WeighIns("ottoline").Select(w => w.Weight.Amount);
    }

    [Fact]
    public void What_is_told_outside_a_session_stays_in_the_order_told()
    {
        var (away, sore) = (new FactId("rack", 1), new FactId("rack", 2));
        using (var book = Open())
        {
            book.Tell("ottoline", new AwayTold(away, Tollbooth.Evening, Tollbooth.Wednesday, Until: null, AwayFor.Holiday));
            book.Tell("ottoline", new SoreTold(sore, Tollbooth.Evening, Tollbooth.Wednesday, Motion.Squat));
            book.Tell("ottoline", new FactStruck(new FactId("rack", 3), Tollbooth.Evening, away));
            book.Tell("bram", new SetKnown(new FactId("rack", 4), Tollbooth.Evening, Tollbooth.Wednesday, "bench-press", 8, Mass.Lb(95)));
        }

        using var again = Open();
        again.Told("ottoline").Select(f => f.Id.Sequence).Should().Equal(1, 2, 3);
        new TrainingHistory([], again.Told("ottoline")).Told.Should().ContainSingle().Which.Id.Should().Be(sore);
        again.Told("bram").Should().ContainSingle().Which.Should().BeOfType<SetKnown>().Which.Load.Should().Be(Mass.Lb(95));
        again.NextId().Sequence.Should().Be(5);
    }

    [Fact]
    public void A_fact_of_a_session_never_begun_is_a_mistake_of_the_caller()
    {
        using var book = Open();

        var act = () => book.Append(new FactId("nobody", 1), Tollbooth.Set(book.NextId()));

        act.Should().Throw<InvalidOperationException>();
    }

    [Fact]
    public void A_full_journal_is_copied_early_and_begun_again()
    {
        const int small = 4096;
        var scribe = new Scribe(() => 0);
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening, small))
        {
            scribe.Train(book, 60);
            disk[FileNames.Journal].Length.Should().BeLessThan(60 * 512);
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening, small);
        scribe.Missing(again).Should().Be(0);
    }

    [Fact]
    public void A_session_larger_than_the_journal_gets_a_larger_journal()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening, journalRoom: 1024);
        var asked = Enumerable.Repeat(Tollbooth.Squat, 40).ToList();

        book.Begin(Tollbooth.Head(book.NextId()) with { Prescriptions = asked });

        var killed = disk.Crash(disk.Calls.Count, new Loss(LossKind.Dropped, 1, new Random(1)));
        using var again = LiteLogbook.Open(killed, Tollbooth.Evening);
        again.Open("ottoline")!.Prescriptions.Should().HaveCount(40);
    }

    [Fact]
    public void Writers_on_several_threads_take_turns()
    {
        using var book = Open();
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);

        Parallel.For(0, 40, n => book.Append(head.Id, Tollbooth.Set(book.NextId(), n)));

        book.Open("ottoline")!.Sets.Select(s => s.Set.Id).Should().OnlyHaveUniqueItems().And.HaveCount(40);
        book.Trouble.Should().BeNull();
    }

    [Fact]
    public void A_closed_logbook_answers_nothing()
    {
        var book = Open();
        book.Dispose();

        var act = () => book.Lifters();

        act.Should().Throw<ObjectDisposedException>();
    }

    private LiteLogbook Open() => LiteLogbook.Open(disk, Tollbooth.Evening);
}
