using System.Globalization;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>
/// Logbooks that an older RackSide wrote and was killed over, one for each past format; Frozen/make.sh made them and says how.
/// </summary>
public sealed class FrozenTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("frozen-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("format-1", 36)]
    [InlineData("format-2", 38)]
    [InlineData("format-4", 40)]
    public void A_logbook_of_every_past_format_opens_with_every_set_it_acknowledged_and_is_gone_on_with(string format, int sets)
    {
        Thaw(format);
        var acknowledged = File.ReadLines(Path.Combine(folder, "acknowledged.txt")).Select(Pair).ToList();
        acknowledged.Should().HaveCount(sets);
        FactId added;
        using (var book = LiteLogbook.Open(folder, Tollbooth.Evening))
        {
            book.Report.Condition.Should().Be(Condition.Sound);
            book.Report.Lost.Should().Be(0);
            Check(book);
            var open = book.Open("ottoline")!;
            added = book.NextId();
            book.Append(open.Head.Id, Tollbooth.Set(added));
        }

        // Every session was packed, also those that nobody wrote to.
        LogFile.Read(File.ReadAllBytes(Path.Combine(folder, "log.db")), "log.db").HoldsWrittenOut.Should().BeFalse();

        // Closed by this RackSide it lies at rest, and is opened by its register.
        using var again = LiteLogbook.Open(folder, Tollbooth.Evening);
        again.Report.Sentence.Should().BeNull();
        again.Open("ottoline")!.Facts[^1].Id.Should().Be(added);
        Check(again);

        void Check(LiteLogbook book)
        {
            var held = book.Sessions("ottoline").SelectMany(s => s.Facts.OfType<SetDone>().Select(f => (Session: s.Head.Id.Sequence, Set: f.Id.Sequence, f.Done, f.Load))).ToList();
            foreach (var (session, set) in acknowledged)
            {
                held.Should().ContainSingle(h => h.Session == session && h.Set == set).Which.Should().Be((session, set, (int)(set % 13), Mass.Kg(set)));
            }
        }
    }

    private void Thaw(string format)
    {
        foreach (var file in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Frozen", format)))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }
    }

    private static (long Session, long Set) Pair(string line) => line.Split(' ') is [var session, var set]
        ? (long.Parse(session, CultureInfo.InvariantCulture), long.Parse(set, CultureInfo.InvariantCulture))
        : throw new InvalidDataException(line);
}
