namespace RackSide.Logbook.Tests;

/// <summary>Whole sessions taken at once, past the journal.</summary>
public class ImportTests
{
    private readonly RecordedDisk disk = new();

    [Fact]
    public void They_are_there_at_once_and_after_opening_again_and_can_be_gone_on_with()
    {
        var sessions = Sessions("bcdfgh", 1, 40);
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            book.Import(sessions);
            Check(book);
            book.NextId().Sequence.Should().Be(sessions[^1].Facts[^1].Id.Sequence + 1);
            book.Append(sessions[^1].Head.Id, Tollbooth.Set(book.NextId(), 6));
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Sessions("ottoline")[^1].Facts.Should().HaveCount(6);
        again.Report.Sentence.Should().BeNull();

        void Check(LiteLogbook book) => book.Sessions("ottoline").Select(s => s.Head.Id).Should().Equal(sessions.Select(s => s.Head.Id));
    }

    [Fact]
    public void A_session_that_is_here_already_stays_as_it_is()
    {
        var sessions = Sessions("bcdfgh", 1, 3);
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        book.Begin(sessions[1].Head);

        book.Import(sessions);

        book.Sessions("ottoline").Select(s => s.Facts.Count).Should().Equal(5, 0, 5);
    }

    [Fact]
    public void A_power_cut_leaves_all_of_them_or_none()
    {
        var before = 0;
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            book.Keep(Tollbooth.Ottoline);
            before = disk.Calls.Count;
            book.Import(Sessions("bcdfgh", 1, 30));
        }

        var chance = new Random(20260304);
        var left = Enumerable.Range(0, 120).Select(n =>
        {
            var loss = new Loss((LossKind)(n % Enum.GetValues<LossKind>().Length), 512, new Random(n));
            using var book = LiteLogbook.Open(disk.Crash(chance.Next(before, disk.Calls.Count + 1), loss), Tollbooth.Evening);
            book.Lifters().Should().ContainSingle();
            return book.Sessions("ottoline").Count;
        }).ToList();

        left.Distinct().Should().BeEquivalentTo([0, 30]);
    }

    [Fact]
    public void A_full_disk_is_told()
    {
        LiteLogbook.Open(disk, Tollbooth.Evening).Dispose();
        using (var book = LiteLogbook.Open(new FullDisk(disk, room: 20_000), Tollbooth.Evening))
        {
            var act = () => book.Import(Sessions("bcdfgh", 1, 40));
            act.Should().Throw<IOException>().WithMessage("*could not be written*");
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        again.Sessions("ottoline").Should().BeEmpty();
    }

    private static List<SessionRecord> Sessions(string rack, long from, int count) =>
        [.. Enumerable.Range(0, count).Select(n => new SessionRecord(
            Tollbooth.Head(new FactId(rack, from + (6 * n)), date: Tollbooth.Wednesday.PlusDays(2 * n)),
            [.. Enumerable.Range(1, 5).Select(i => Tollbooth.Set(new FactId(rack, from + (6 * n) + i), i))]))];
}
