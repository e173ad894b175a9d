using NodaTime;
using RackSide.Logbook.Copies;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;

namespace RackSide.Logbook;

/// <summary>
/// What a logbook held at one moment, to read and not to write: taken while another process has it open, or from a backup.
/// Taking it locks nothing and changes nothing.
/// </summary>
public sealed class LogbookSnapshot : ILogbook
{
    private readonly Lazy<byte[]> image;

    internal LogbookSnapshot(Contents contents, byte[]? image = null) =>
        (Contents, this.image) = (contents, new Lazy<byte[]>(() => image ?? Engines.Image(contents)));

    /// <summary>One that holds nothing.</summary>
    public static LogbookSnapshot Nothing => new(new Contents(""));

    /// <summary>Everything it holds.</summary>
    internal Contents Contents { get; }

    /// <summary>The file of house rules of that moment, byte for byte; null where it holds none.</summary>
    public byte[]? HouseRules => Contents.HouseRules;

    /// <summary>The bytes of a log that holds it.</summary>
    internal byte[] Image => image.Value;

    /// <summary>How much it holds.</summary>
    public LogbookCounts Counts => new(
        Contents.About.Lifters,
        Contents.About.Sessions,
        Contents.Sessions.Sum(s => s.Sets.Count),
        Contents.Lifters.Sum(l => WeighIns(l.Key).Count),
        Contents.About.Told,
        Contents.Sessions.Select(s => (LocalDate?)s.Date).Max());

    /// <summary>How it stands with the other racks of a gym.</summary>
    public ShareStatus Share => new(
        Contents.Rack, Contents.Share.State.Gym, Contents.Share.State.Joined, Contents.Share.WaitingCount, Contents.Share.State.Pulled, Contents.Share.State.Anchor, Contents.Share.State.Whole);

    /// <summary>When the newest entry in it was made; null where there is none.</summary>
    public Instant? Newest => Moments().Max();

    /// <summary>Reads the logbook of a folder that another process has open.</summary>
    /// <exception cref="LogbookUnreadableException">Its copy cannot be read.</exception>
    public static LogbookSnapshot Of(string folder) => Of(folder, name => UnlockedFile.ReadAll(Path.Combine(folder, name)));

    /// <summary>Reads a backup.</summary>
    /// <exception cref="LogbookUnreadableException">It is none, or is damaged, or a newer version wrote it.</exception>
    public static LogbookSnapshot Of(FileInfo backup)
    {
        try
        {
            return Read(File.ReadAllBytes(backup.FullName), backup.Name);
        }
        catch (NewerFormatException e)
        {
            throw new LogbookUnreadableException($"{backup} was written by a newer RackSide (format {e.Version}; this one reads up to {About.Format}). Update RackSide on this machine.", e);
        }
        catch (DamagedFileException e)
        {
            throw new LogbookUnreadableException($"{backup} is no RackSide backup, or is damaged. Nothing was changed.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LogbookUnreadableException($"{backup} cannot be read ({e.Message.TrimEnd('.')}).", e);
        }
    }

    /// <summary>The same with entries that no disk took yet, in their order; one that is here already stays as it is.</summary>
    public LogbookSnapshot With(IEnumerable<SessionEntry> unwritten)
    {
        var contents = Contents.As(Contents.Rack, Contents.Writes);
        foreach (var entry in unwritten)
        {
            contents.Writes += contents.Take(Of(entry)) is null ? 0 : 1;
        }

        return new LogbookSnapshot(contents);
    }

    /// <summary>The same with whole sessions and body weights; what is here already stays as it is.</summary>
    public LogbookSnapshot With(IEnumerable<SessionRecord> sessions, IEnumerable<(FactId Id, string Lifter, WeighIn Weighed)> weights)
    {
        var contents = Contents.As(Contents.Rack, Contents.Writes);
        contents.Writes += sessions.Count(s => contents.Take(s) is not null)
            + weights.Count(w => contents.Take(new Entry.WeightKept(new KeptWeight(w.Id, w.Lifter, w.Weighed.Date, w.Weighed.Weight))) is not null);
        return new LogbookSnapshot(contents);
    }

    /// <summary>The same with the file of house rules; null for without.</summary>
    public LogbookSnapshot WithHouseRules(byte[]? rules)
    {
        var contents = Contents.As(Contents.Rack, Contents.Writes);
        contents.HouseRules = rules;
        return new LogbookSnapshot(contents);
    }

    /// <summary>Reads the bytes of a log, and verifies them.</summary>
    /// <exception cref="DamagedFileException">They are none, or are damaged.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote them.</exception>
    internal static LogbookSnapshot Read(byte[] image, string name) => new(LogFile.Read(image, name), image);

    /// <summary>Reads it by the names of its files.</summary>
    internal static LogbookSnapshot Of(string folder, Func<string, byte[]?> read)
    {
        try
        {
            return new LogbookSnapshot(SnapshotReading.Of(read));
        }
        catch (Exception e) when (e is DamagedFileException or NewerFormatException or IOException or UnauthorizedAccessException)
        {
            throw new LogbookUnreadableException($"The logbook in {folder} is open in another window, and its copy cannot be read ({e.Message.TrimEnd('.')}). Close that window, then try again.", e);
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<Lifter> Lifters() => [.. Contents.Lifters.Where(l => !Contents.Share.IsGone(l.Key)).OrderBy(l => l.Joined)];

    /// <inheritdoc/>
    public IReadOnlyList<Fact> Told(string lifter) => [.. Contents.Told.Where(t => t.Lifter == lifter).Select(t => t.Fact).OrderBy(f => f.Id)];

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(string lifter) => [.. Contents.Sessions.Where(s => s.Head.Lifter == lifter).OrderBy(s => s.Head.Id)];

    /// <inheritdoc/>
    public IReadOnlyList<SessionCard> Cards(string lifter) => [.. Sessions(lifter).Select(LookBack.Card)];

    /// <inheritdoc/>
    public IReadOnlyList<SessionRecord> Sessions(string lifter, IReadOnlySet<FactId> which) =>
        [.. Sessions(lifter).Where(s => which.Contains(s.Head.Id))];

    /// <inheritdoc/>
    public Instant? LastEntry => ClockDoubt.Newest(Contents.Sessions, Contents.Told.Select(t => t.Fact));

    /// <inheritdoc/>
    public SessionRecord? Open(string lifter) => Sessions(lifter).LastOrDefault(s => !s.Closed);

    /// <inheritdoc/>
    public IReadOnlyList<WeighIn> WeighIns(string lifter) => [.. Storing.WeighIns.Of(Contents.Weights.Where(w => w.Lifter == lifter), Cards(lifter))];

    /// <inheritdoc/>
    public FactId NextId() => throw ReadOnly();

    /// <inheritdoc/>
    public void Keep(Lifter lifter) => throw ReadOnly();

    /// <inheritdoc/>
    public void Begin(SessionHead head) => throw ReadOnly();

    /// <inheritdoc/>
    public void Append(FactId session, Fact fact) => throw ReadOnly();

    /// <inheritdoc/>
    public void Settle()
    {
    }

    /// <inheritdoc/>
    public void Tell(string lifter, Fact fact) => throw ReadOnly();

    /// <inheritdoc/>
    public void Weigh(string lifter, LocalDate date, Mass weight) => throw ReadOnly();

    /// <inheritdoc/>
    public void Dispose()
    {
    }

    private IEnumerable<Instant?> Moments() => Contents.Lifters.Select(l => (Instant?)l.Joined)
        .Concat(Contents.Told.Select(t => (Instant?)t.Fact.At))
        .Concat(Contents.Sessions.SelectMany(s => s.Facts.Select(f => (Instant?)f.At).Append(s.Head.Begun)));

    private static Entry Of(SessionEntry entry) => entry switch
    {
        SessionEntry.Begun begun => new Entry.SessionBegun(begun.Head),
        SessionEntry.Added added => new Entry.FactAdded(added.Session, added.Fact),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static InvalidOperationException ReadOnly() => new("a snapshot is not written to");
}
