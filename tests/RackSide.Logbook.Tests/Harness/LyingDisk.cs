using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Tests.Harness;

/// <summary>A worn card: it takes every byte, and one of them comes back changed.</summary>
internal sealed class LyingDisk(RecordedDisk disk) : IDisk
{
    public string Folder => disk.Folder;

    public IDisposable? Lock(string name) => disk.Lock(name);

    public bool Exists(string name) => disk.Exists(name);

    public IDiskFile Open(string name) => new File(disk.Open(name));

    public IDiskFile Create(string name) => new File(disk.Create(name));

    public void Rename(string from, string to) => disk.Rename(from, to);

    public void Delete(string name) => disk.Delete(name);

    public IReadOnlyList<string> Names() => disk.Names();

    public void SyncNames() => disk.SyncNames();

    private sealed class File(IDiskFile file) : IDiskFile
    {
        public long Length => file.Length;

        public int Read(Span<byte> buffer, long at)
        {
            var read = file.Read(buffer, at);
            if (at <= 9_000 && 9_000 < at + read)
            {
                buffer[(int)(9_000 - at)] ^= 1;
            }

            return read;
        }

        public void Write(ReadOnlySpan<byte> bytes, long at) => file.Write(bytes, at);

        public void SetLength(long length) => file.SetLength(length);

        public void Sync() => file.Sync();

        public void Dispose() => file.Dispose();
    }
}
