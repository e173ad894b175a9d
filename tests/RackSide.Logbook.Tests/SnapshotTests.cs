using System.Security.Cryptography;

namespace RackSide.Logbook.Tests;

/// <summary>What a second process reads while the first has the logbook open: the copy and the journal, never the log.</summary>
public sealed class SnapshotTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("logbook-").FullName;
    private readonly RecordedDisk disk = new();
    private readonly Scribe scribe = new(() => 0);

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void It_holds_every_acknowledged_write_and_touches_nothing()
    {
        using var book = LiteLogbook.Open(folder, Tollbooth.Evening);
        book.Keep(Tollbooth.Ottoline);
        var head = Tollbooth.Head(book.NextId());
        book.Begin(head);
        book.Append(head.Id, Tollbooth.Set(book.NextId()));
        book.Append(head.Id, Tollbooth.Set(book.NextId(), 2));
        book.Weigh("ottoline", Tollbooth.Wednesday, Mass.Kg(70));

        using var seen = LogbookSnapshot.Of(folder);

        seen.Lifters().Should().Equal(book.Lifters());
        seen.Open("ottoline")!.Facts.Should().Equal(book.Open("ottoline")!.Facts);
        seen.WeighIns("ottoline").Should().Equal(book.WeighIns("ottoline"));
        seen.Newest.Should().Be(Tollbooth.Evening + Duration.FromMinutes(2));
        book.Append(head.Id, Tollbooth.Set(book.NextId(), 3));
        book.Trouble.Should().BeNull();
    }

    [Fact]
    public void The_log_itself_and_its_write_ahead_log_are_never_asked_for()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 5);
        var asked = new List<string>();

        LogbookSnapshot.Of("a folder", name =>
        {
            asked.Add(name);
            return disk[name];
        });

        asked.Should().OnlyContain(n => n == FileNames.Copy || n == FileNames.Journal);
    }

    [Fact]
    public void A_copy_renewed_between_the_two_readings_is_read_again()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 5);
        var (oldCopy, turns) = (disk[FileNames.Copy], 0);
        book.Dispose();
        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(again, 5);

        var seen = LogbookSnapshot.Of("a folder", name => name == FileNames.Copy && turns++ == 0 ? oldCopy : disk[name]);

        turns.Should().Be(2);
        seen.Sessions("ottoline").Select(s => s.Facts.Count).Should().Equal(5, 5);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("torn off")]
    public void Without_a_journal_it_holds_what_the_copy_holds(string? journal)
    {
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening))
        {
            scribe.Train(book, 5);
        }

        using var again = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(again, 3);

        var seen = LogbookSnapshot.Of("a folder", name => name == FileNames.Journal ? journal is null ? null : System.Text.Encoding.ASCII.GetBytes(journal) : disk[name]);

        seen.Sessions("ottoline").Should().ContainSingle().Which.Facts.Should().HaveCount(5);
    }

    [Fact]
    public void A_record_half_written_and_what_follows_a_gap_are_left_out()
    {
        using var book = LiteLogbook.Open(disk, Tollbooth.Evening);
        scribe.Train(book, 6);
        var journal = disk[FileNames.Journal];
        var starts = Enumerable.Range(1, (journal.Length / 512) - 1).Where(s => journal[s * 512] == 1).ToList();
        journal[(starts[4] * 512) + 30] ^= 1;

        var seen = LogbookSnapshot.Of("a folder", name => name == FileNames.Journal ? journal : disk[name]);

        seen.Sessions("ottoline").Should().ContainSingle().Which.Facts.Count.Should().BeLessThan(6);
        seen.WeighIns("ottoline").Should().BeEmpty();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Without_a_copy_it_says_what_to_do(bool missing)
    {
        LiteLogbook.Open(disk, Tollbooth.Evening).Dispose();
        var broken = RandomNumberGenerator.GetBytes(20_000);

        var act = () => LogbookSnapshot.Of("the garage", name => name == FileNames.Copy ? missing ? null : broken : disk[name]);

        act.Should().Throw<LogbookUnreadableException>().WithMessage("The logbook in the garage is open in another window, and its copy cannot be read (*Close that window, then try again.");
    }
}
