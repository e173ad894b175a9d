using NodaTime;
using RackSide.Logbook.Copies;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Racks;

namespace RackSide.Logbook;

/// <summary>
/// The logbook in a folder. A write goes to a small synced journal and is acknowledged; when nothing else waits it goes to
/// the log too, in a synced transaction. Reads answer from the log, and from memory for what was
/// written since. It may be used from several threads; writes wait for the disk, so they belong
/// on none that paints. docs/durability.md says what is promised and how it is tested.
/// </summary>
public sealed partial class LiteLogbook : ILogbook
{
    private const int JournalRoom = 256 * 1024;

    private readonly Lock gate = new();
    private readonly IDisk disk;
    private readonly IDisposable hold;
    private Store store;
    private long lastSequence;
    private bool closed;
    private long writes;

    private LiteLogbook(IDisk disk, IDisposable hold, Store store, OpenReport report)
    {
        this.disk = disk;
        this.hold = hold;
        this.store = store;
        Report = report;
        lastSequence = store.Register.HighestSequence;
    }

    /// <summary>What opening found and did.</summary>
    public OpenReport Report { get; }

    /// <summary>
    /// A sentence where the log file takes nothing more until the logbook is opened again; null where all is well. Writes
    /// still go to the journal, and nothing is lost.
    /// </summary>
    public string? Trouble
    {
        get
        {
            lock (gate)
            {
                return store.Trouble is { } trouble
                    ? $"The log file in {disk.Folder} cannot be written ({Told(trouble)}). Sets are kept in the journal beside it. "
                        + "Free some space or check the disk, then start RackSide again."
                    : null;
            }
        }
    }

    /// <summary>How many writes it took since it was opened; it tells whether a backup is of now.</summary>
    public long Writes
    {
        get
        {
            lock (gate)
            {
                return writes;
            }
        }
    }

    /// <summary>The names of the files in its folder that change with what it holds.</summary>
    public static IReadOnlyList<string> Files { get; } = [FileNames.Main, FileNames.WriteAhead, FileNames.Journal];

    /// <summary>Whether a folder holds a logbook or what is left of one. Looking makes nothing.</summary>
    public static bool IsIn(string folder) =>
        new[] { FileNames.Main, FileNames.Copy, FileNames.Journal }.Any(name => File.Exists(Path.Combine(folder, name)))
        || new FileInfo(Path.Combine(folder, FileNames.WriteAhead)) is { Exists: true, Length: > 0 };

    /// <summary>Opens the logbook in a folder, or begins one; nobody else can open it until it is disposed.</summary>
    /// <param name="folder">The folder; created for its owner only where it is missing.</param>
    /// <param name="now">The time, which dates the name of a damaged file that is kept.</param>
    /// <exception cref="LogbookBusyException">It is open in another process.</exception>
    /// <exception cref="LogbookUnreadableException">It cannot be opened; nothing was thrown away.</exception>
    public static LiteLogbook Open(string folder, Instant now)
    {
        FolderDisk disk;
        try
        {
            disk = new FolderDisk(folder);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException)
        {
            throw Unopened(folder, e);
        }

        return Open(disk, now);
    }

    /// <summary>Opens the logbook on a disk.</summary>
    internal static LiteLogbook Open(IDisk disk, Instant now, int journalRoom = JournalRoom, Func<string>? newRack = null)
    {
        var hold = Lock(disk);
        try
        {
            var (store, report) = new Opening(disk, now, journalRoom, newRack ?? NewRack).Run();
            return new LiteLogbook(disk, hold, store, report);
        }
        catch (NewerFormatException e)
        {
            hold.Dispose();
            throw Newer(disk.Folder, e);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or DamagedFileException or IOException and not LogbookUnreadableException)
        {
            hold.Dispose();
            throw Unopened(disk.Folder, e);
        }
        catch
        {
            hold.Dispose();
            throw;
        }
    }

    /// <inheritdoc/>
    public FactId NextId()
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            return new FactId(store.Register.Rack, lastSequence = NextCount());
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<Lifter> Lifters() => Read(register => register.Lifters.OrderBy(l => l.Joined));

    /// <inheritdoc/>
    public void Keep(Lifter lifter) => WriteAndSettle(register => register.Share.State.Joined
        ? new Entry.LifterKept(lifter, NextId(), LifterFieldsOf.Told(register.Lifter(lifter.Key), lifter))
        : new Entry.LifterKept(lifter));

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The session was begun already.</exception>
    public void Begin(SessionHead head) => WriteAndSettle(register => !register.Has(head.Id)
        ? new Entry.SessionBegun(head)
        : throw new InvalidOperationException($"session {head.Id} was begun already"));

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The session was not begun, or has a fact of that identity.</exception>
    public void Append(FactId session, Fact fact) => Write(register => register.Session(session) switch
    {
        null => throw new InvalidOperationException($"session {session} was not begun"),
        var known when known.Facts.Any(f => f.Id == fact.Id) => throw new InvalidOperationException($"fact {fact.Id} is written already"),
        _ => new Entry.FactAdded(session, fact),
    });

    /// <inheritdoc/>
    public void Settle()
    {
        lock (gate)
        {
            if (!closed)
            {
                store.Settle();
            }
        }
    }

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">A fact of that identity is written already.</exception>
    public void Tell(string lifter, Fact fact) => WriteAndSettle(register => register.IsTold(fact.Id)
        ? throw new InvalidOperationException($"fact {fact.Id} is written already")
        : new Entry.FactTold(new KeptFact(lifter, fact)));

    /// <inheritdoc/>
    public IReadOnlyList<Fact> Told(string lifter) =>
        Read(register => register.Told.Where(t => t.Lifter == lifter).Select(t => t.Fact).OrderBy(f => f.Id));

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(string lifter) =>
        Read(register => register.AllOf(lifter));

    /// <inheritdoc/>
    public IReadOnlyList<SessionCard> Cards(string lifter) => Read(register => register.Cards(lifter));

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(string lifter, IReadOnlySet<FactId> which) =>
        Read(register => register.Sessions(which).Where(s => s.Head.Lifter == lifter));

    /// <inheritdoc/>
    public Instant? LastEntry
    {
        get
        {
            lock (gate)
            {
                return store.Register.Newest?.At;
            }
        }
    }

    /// <inheritdoc/>
    public SessionRecord? Open(string lifter) =>
        Cards(lifter).LastOrDefault(c => !c.Closed) is { } open ? Sessions(lifter, new HashSet<FactId> { open.Id })[0] : null;

    /// <inheritdoc/>
    public void Weigh(string lifter, LocalDate date, Mass weight)
    {
        var id = NextId();
        WriteAndSettle(_ => new Entry.WeightKept(new KeptWeight(id, lifter, date, weight)));
    }

    /// <inheritdoc/>
    public IReadOnlyList<WeighIn> WeighIns(string lifter) => Read(register => Storing.WeighIns.Of(register.Weights.Where(w => w.Lifter == lifter), register.Cards(lifter)));

    /// <summary>Copies the log, begins the journal anew and lets others open it. Where that fails nothing is lost: the journal stays.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            if (!closed)
            {
                closed = true;
                using (hold)
                {
                    store.Dispose();
                }
            }
        }
    }

    // What the engine says of its own pages helps no lifter, nor does the path that the system adds to its words.
    private static string Told(Exception trouble) => trouble is IOException ? trouble.Message.Split(" : '")[0].TrimEnd('.') : "it is damaged";

    private IReadOnlyList<T> Read<T>(Func<Register, IEnumerable<T>> what)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            try
            {
                return [.. what(store.Register)];
            }
            catch (Exception e) when (e is DamagedFileException or IOException)
            {
                throw new LogbookUnreadableException(
                    $"What the logbook in {disk.Folder} holds cannot be read ({e.Message.TrimEnd('.')}). Nothing is lost by that. "
                        + "Check the disk, then start RackSide again.",
                    e);
            }
        }
    }

    // What comes one at a time and rarely is not left in one place.
    private void WriteAndSettle(Func<Register, Entry> what)
    {
        lock (gate)
        {
            Write(what);
            store.Settle();
        }
    }

    private void Write(Func<Register, Entry> what)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            try
            {
                store.Write(what(store.Register));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                throw new IOException($"This could not be written to the logbook in {disk.Folder} ({e.Message.TrimEnd('.')}). Nothing written before is lost.", e);
            }

            writes++;
            lastSequence = Math.Max(lastSequence, store.Register.HighestSequence);
        }
    }

    private static IDisposable Lock(IDisk disk)
    {
        try
        {
            return disk.Lock(FileNames.Lock) ?? throw new LogbookBusyException(disk.Folder);
        }
        catch (Exception e) when (e is UnauthorizedAccessException or IOException and not LogbookBusyException)
        {
            throw Unopened(disk.Folder, e);
        }
    }

    // Short enough to read out, long enough that two racks of one gym do not meet; without vowels, so that it spells nothing.
    // Seeded by the system; nothing here is a secret, and the other source would load a library of five megabytes for six letters.
    private static string NewRack() => new(Random.Shared.GetItems<char>("bcdfghjkmnpqrstvwxyz23456789", 6));

    private static LogbookUnreadableException Newer(string folder, NewerFormatException e) => new(
        $"The logbook in {folder} was written by a newer RackSide (format {e.Version}; this one reads up to {About.Format}). "
        + "Nothing was changed. Update RackSide on this machine.",
        e);

    private static LogbookUnreadableException Unopened(string folder, Exception e) => e is UnauthorizedAccessException ? new(
        $"The logbook in {folder} belongs to another user, or may not be read and written by this one ({e.Message.TrimEnd('.')}). "
        + "Nothing was changed. Start RackSide as its owner, or give the folder and its files to this user (chown), then start again.",
        e) : new(
        $"The logbook in {folder} could not be opened ({e.Message.TrimEnd('.')}). Nothing is lost. "
        + "Free some space, or check the disk and who may write to that folder, then start RackSide again.",
        e);
}
