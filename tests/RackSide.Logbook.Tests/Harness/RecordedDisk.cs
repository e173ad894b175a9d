using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>
/// A disk in memory that remembers every call that changes it, so that <see cref="Crash"/> can say what any power cut
/// would have left.
/// </summary>
internal sealed class RecordedDisk : IDisk
{
    private readonly Dictionary<string, int> names = new(StringComparer.Ordinal);
    private readonly List<DiskImage> nodes = [];
    private readonly HashSet<int> open = [];
    private bool locked;

    public List<Call> Calls { get; } = [];

    public string Folder => "the tested folder";

    /// <summary>A lying device: it says yes to a sync and keeps nothing.</summary>
    public bool IgnoresSync { get; init; }

    public IDisposable? Lock(string name)
    {
        if (locked)
        {
            return null;
        }

        locked = true;
        return new Unlock(this);
    }

    public bool Exists(string name) => names.ContainsKey(name);

    public IDiskFile Open(string name) => names.TryGetValue(name, out var node) ? Opened(node) : Create(name);

    public IDiskFile Create(string name)
    {
        if (names.TryGetValue(name, out var known))
        {
            var opened = Opened(known);
            Do(new Call.Resized(known, 0));
            return opened;
        }

        Do(new Call.Named(name, nodes.Count));
        return Opened(names[name]);
    }

    public void Rename(string from, string to) => Do(new Call.Renamed(from, to));

    public void Delete(string name) => Do(new Call.Deleted(name));

    public IReadOnlyList<string> Names() => [.. names.Keys];

    public void SyncNames() => Do(new Call.NamesSynced());

    /// <summary>The bytes under a name.</summary>
    public byte[] this[string name]
    {
        get => nodes[names[name]].Bytes;
        set
        {
            using var file = Create(name);
            file.Write(value, 0);
        }
    }

    /// <summary>Takes a name away, as a person with a file manager would.</summary>
    public void Remove(string name) => Do(new Call.Renamed(name, "elsewhere"));

    /// <summary>The node a name stands for.</summary>
    public int Node(string name) => names[name];

    /// <summary>The same files on another disk, all synced; its calls begin with putting them there.</summary>
    public RecordedDisk Clone()
    {
        var clone = new RecordedDisk();
        foreach (var (name, node) in names)
        {
            using var file = clone.Create(name);
            file.Write(nodes[node].Bytes, 0);
            file.Sync();
        }

        clone.SyncNames();
        return clone;
    }

    /// <summary>What is left when the power goes after that many calls.</summary>
    public RecordedDisk Crash(int calls, Loss loss)
    {
        var left = new RecordedDisk();
        var unsynced = new Dictionary<int, List<Call>>();
        var unsyncedNames = new List<Call>();
        foreach (var call in Calls.Take(calls))
        {
            switch (call)
            {
                case Call.Named or Call.Renamed or Call.Deleted:
                    unsyncedNames.Add(call);
                    break;
                case Call.NamesSynced:
                    left.Apply(unsyncedNames);
                    unsyncedNames.Clear();
                    break;
                case Call.Synced sync when unsynced.Remove(sync.Node, out var done):
                    left.Apply(done);
                    break;
                case Call.Synced:
                    break;
                default:
                    unsynced.TryAdd(call.Of, []);
                    unsynced[call.Of].Add(call);
                    break;
            }
        }

        // A file system keeps the order of its names; bytes may arrive in any.
        left.Apply(loss.Prefix(unsyncedNames));
        foreach (var (_, waiting) in unsynced.OrderBy(u => u.Key))
        {
            left.Apply(loss.Survivors(waiting));
        }

        return left.Clone();
    }

    private void Do(Call call)
    {
        if (IgnoresSync && call is Call.Synced)
        {
            return;
        }

        Calls.Add(call);
        Apply([call]);
    }

    private void Apply(IEnumerable<Call> calls)
    {
        foreach (var call in calls)
        {
            switch (call)
            {
                case Call.Named named:
                    names[named.Name] = named.Node;
                    NodeAt(named.Node);
                    break;
                case Call.Renamed renamed when names.Remove(renamed.From, out var node):
                    names[renamed.To] = node;
                    break;
                case Call.Deleted deleted:
                    names.Remove(deleted.Name);
                    break;
                case Call.Wrote wrote:
                    NodeAt(wrote.Node).Write(wrote.Bytes, wrote.At);
                    break;
                case Call.Resized resized:
                    NodeAt(resized.Node).Resize(resized.Length);
                    break;
            }
        }
    }

    // For nobody else, as on a real disk: a file that is still open here is refused.
    private File Opened(int node) => open.Add(node)
        ? new File(this, node)
        : throw new IOException("The process cannot access the file because it is being used by another process.");

    private DiskImage NodeAt(int node)
    {
        while (nodes.Count <= node)
        {
            nodes.Add(new DiskImage());
        }

        return nodes[node];
    }

    private sealed class Unlock(RecordedDisk disk) : IDisposable
    {
        public void Dispose() => disk.locked = false;
    }

    private sealed class File(RecordedDisk disk, int node) : IDiskFile
    {
        public long Length => disk.nodes[node].Length;

        public int Read(Span<byte> buffer, long at) => disk.nodes[node].Read(buffer, at);

        public void Write(ReadOnlySpan<byte> bytes, long at) => disk.Do(new Call.Wrote(node, at, bytes.ToArray()));

        public void SetLength(long length) => disk.Do(new Call.Resized(node, length));

        public void Sync() => disk.Do(new Call.Synced(node));

        public void Dispose() => disk.open.Remove(node);
    }
}
