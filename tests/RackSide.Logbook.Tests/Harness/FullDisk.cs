using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>A disk with room for so many more bytes: files that would grow further are refused, bytes already there can be written over.</summary>
internal sealed class FullDisk(RecordedDisk disk, long room) : IDisk
{
    /// <summary>How many bytes may still be added.</summary>
    public long Room { get; set; } = room;

    /// <summary>Refuses every write, as a card that has turned itself read-only does.</summary>
    public bool Dead { get; set; }

    public string Folder => disk.Folder;

    public IDisposable? Lock(string name) => disk.Lock(name);

    public bool Exists(string name) => disk.Exists(name);

    public IDiskFile Open(string name) => new File(this, disk.Open(name));

    public IDiskFile Create(string name) => new File(this, disk.Create(name));

    public void Rename(string from, string to) => disk.Rename(from, to);

    public void Delete(string name) => disk.Delete(name);

    public IReadOnlyList<string> Names() => disk.Names();

    public void SyncNames() => disk.SyncNames();

    private sealed class File(FullDisk full, IDiskFile file) : IDiskFile
    {
        public long Length => file.Length;

        public int Read(Span<byte> buffer, long at) => file.Read(buffer, at);

        public void Write(ReadOnlySpan<byte> bytes, long at)
        {
            Take(at + bytes.Length);
            file.Write(bytes, at);
        }

        public void SetLength(long length)
        {
            Take(length);
            file.SetLength(length);
        }

        public void Sync() => file.Sync();

        public void Dispose() => file.Dispose();

        private void Take(long end)
        {
            var more = Math.Max(0, end - file.Length);
            if (full.Dead || more > full.Room)
            {
                throw new IOException("No space left on device");
            }

            full.Room -= more;
        }
    }
}
