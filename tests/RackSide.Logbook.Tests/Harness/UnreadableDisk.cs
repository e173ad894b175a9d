using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>A disk on which one file cannot be read past its first page, as with a sector that has gone; another name does not mend it.</summary>
internal sealed class UnreadableDisk(RecordedDisk disk, string bad, Exception failure, bool atOnce = false) : IDisk
{
    private string? bad = bad;

    public string Folder => disk.Folder;

    public IDisposable? Lock(string name) => disk.Lock(name);

    public bool Exists(string name) => disk.Exists(name);

    public IDiskFile Open(string name) => name != bad ? disk.Open(name) : atOnce ? throw failure : new File(disk.Open(name), failure);

    public IDiskFile Create(string name) => disk.Create(name);

    public void Rename(string from, string to)
    {
        disk.Rename(from, to);
        bad = from == bad ? to : to == bad ? null : bad;
    }

    public void SyncNames() => disk.SyncNames();

    public IReadOnlyList<string> Names() => disk.Names();

    public void Delete(string name) => disk.Delete(name);

    private sealed class File(IDiskFile file, Exception failure) : IDiskFile
    {
        public long Length => file.Length;

        public int Read(Span<byte> buffer, long at) => at + buffer.Length > 8192 ? throw failure : file.Read(buffer, at);

        public void Write(ReadOnlySpan<byte> bytes, long at) => file.Write(bytes, at);

        public void SetLength(long length) => file.SetLength(length);

        public void Sync() => file.Sync();

        public void Dispose() => file.Dispose();
    }
}
