using LiteDB;
using LiteDB.Engine;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>
/// Power cuts: at a call to the disk, what was not synced is kept, dropped, kept in part, or torn at the block sizes of
/// disks (512 and 4,096 bytes). Not modelled: a device that lies about a sync, a sector turned to garbage.
/// </summary>
public class PowerCutTests
{
    private const int SmallJournal = 8 * 1024;

    [Fact]
    public void No_power_cut_loses_an_acknowledged_write()
    {
        var (disk, scribe) = Evening(new RecordedDisk());

        var bad = States(disk, LongRun.Or(400, 10_000)).Where(s => Lost(disk, scribe, s.Calls, s.Loss)).ToList();

        bad.Should().BeEmpty();
        scribe.Count.Should().BeGreaterThan(40);
    }

    [Fact]
    public void The_first_moments_of_a_new_logbook_survive_every_power_cut()
    {
        var disk = new RecordedDisk();
        var scribe = new Scribe(() => disk.Calls.Count);
        using (var book = LiteLogbook.Open(disk, Tollbooth.Evening, SmallJournal))
        {
            scribe.Train(book, 1);
        }

        var bad =
            from calls in Enumerable.Range(0, Math.Min(disk.Calls.Count, 40))
            from kind in Enum.GetValues<LossKind>()
            where Lost(disk, scribe, calls, new Loss(kind, 512, new Random(calls)))
            select (calls, kind);

        bad.Should().BeEmpty();
    }

    [Fact]
    public void The_check_can_fail_because_the_engine_alone_loses_writes()
    {
        var disk = new RecordedDisk();
        var acks = EngineAlone(disk);

        var failed = States(disk, LongRun.Or(200, 10_000)).Count(s => EngineLost(disk, acks, s.Calls, s.Loss));

        failed.Should().BeGreaterThan(50);
        Console.WriteLine($"the engine alone: {failed} lost");
    }

    [Fact]
    public void The_check_can_fail_because_a_device_that_lies_about_a_sync_loses_writes()
    {
        var (disk, scribe) = Evening(new RecordedDisk { IgnoresSync = true });

        var failed = States(disk, 60).Count(s => Lost(disk, scribe, s.Calls, s.Loss));

        failed.Should().BeGreaterThan(10);
    }

    private static (RecordedDisk Disk, Scribe Scribe) Evening(RecordedDisk disk)
    {
        var scribe = new Scribe(() => disk.Calls.Count);
        foreach (var sets in new[] { 14, 22, 3 })
        {
            using var book = LiteLogbook.Open(disk, Tollbooth.Evening, SmallJournal);
            scribe.Train(book, sets, closes: sets > 3);
        }

        return (disk, scribe);
    }

    private static IEnumerable<(int Calls, Loss Loss)> States(RecordedDisk disk, int count)
    {
        var chance = new Random(20260304);
        var kinds = new[] { (LossKind.Kept, 1), (LossKind.Dropped, 1), (LossKind.Subset, 1), (LossKind.Torn, 512), (LossKind.Torn, 4096) };
        return Enumerable.Range(0, count).Select(n =>
        {
            var (kind, block) = kinds[n % kinds.Length];
            return (chance.Next(disk.Calls.Count + 1), new Loss(kind, block, new Random(n)));
        });
    }

    // Opened, looked at, opened again, written to, and opened once more: damage that only a later write meets counts too.
    private static bool Lost(RecordedDisk disk, Scribe scribe, int calls, Loss loss)
    {
        try
        {
            var left = disk.Crash(calls, loss);
            for (var turn = 0; turn < 3; turn++)
            {
                using var book = LiteLogbook.Open(left, Tollbooth.Evening, SmallJournal);
                if (scribe.Missing(book, calls) > 0 || book.Report.Lost != 0 || book.Report.Condition == Condition.Rebuilt)
                {
                    return true;
                }

                if (turn == 1)
                {
                    book.Begin(Tollbooth.Head(book.NextId(), "juno"));
                }
            }

            using var last = LiteLogbook.Open(left, Tollbooth.Evening, SmallJournal);
            return last.Sessions("juno").Count != 1;
        }
        catch (IOException)
        {
            return true;
        }
    }

    private static List<int> EngineAlone(RecordedDisk disk)
    {
        using var engine = Engines.Open(new PlainStream(disk.Open("log.db")), new PlainStream(disk.Open("log-log.db")));
        engine.Pragma("CHECKPOINT", 20);
        return Enumerable.Range(1, 40).Select(n =>
        {
            engine.Insert("sets", [new BsonDocument { ["_id"] = n, ["text"] = new string('x', 300) }], BsonAutoId.Int32);
            return disk.Calls.Count;
        }).ToList();
    }

    private static bool EngineLost(RecordedDisk disk, List<int> acks, int calls, Loss loss)
    {
        LiteEngine? engine = null;
        try
        {
            var left = disk.Crash(calls, loss);
            engine = Engines.Open(new PlainStream(left.Open("log.db")), new PlainStream(left.Open("log-log.db")));
            using var reader = engine.Query("sets", new Query());
            var found = 0;
            while (reader.Read())
            {
                found++;
            }

            return found < acks.Count(a => a <= calls);
        }
        catch (Exception)
        {
            Engines.Forsake(engine);
            return true;
        }
    }

    /// <summary>The engine's own way to a file: a flush is a sync, and nothing else is.</summary>
    private sealed class PlainStream(IDiskFile file) : Stream
    {
        public override bool CanRead => true;

        public override bool CanWrite => true;

        public override bool CanSeek => true;

        public override long Length => file.Length;

        public override long Position { get; set; }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = file.Read(buffer.AsSpan(offset, count), Position);
            Position += read;
            return read;
        }

        public override void Write(byte[] buffer, int offset, int count)
        {
            file.Write(buffer.AsSpan(offset, count), Position);
            Position += count;
        }

        public override void Flush() => file.Sync();

        public override void SetLength(long value) => file.SetLength(value);

        public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
        {
            SeekOrigin.Begin => offset,
            SeekOrigin.Current => Position + offset,
            _ => Length + offset,
        };
    }
}
