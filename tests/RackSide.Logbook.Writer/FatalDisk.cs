using System.Diagnostics;
using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Writer;

/// <summary>A folder on which the process is killed (SIGKILL) at one of its calls, a write half done.</summary>
/// <param name="disk">The folder.</param>
/// <param name="calls">Counts the calls; shared by disks that one process uses.</param>
internal sealed class FatalDisk(FolderDisk disk, Calls calls) : IDisk
{
    public string Folder => disk.Folder;

    public IDisposable? Lock(string name) => disk.Lock(name);

    public bool Exists(string name) => disk.Exists(name);

    public IReadOnlyList<string> Names() => disk.Names();

    public IDiskFile Open(string name)
    {
        calls.Next();
        return new File(disk.Open(name), calls);
    }

    public IDiskFile Create(string name)
    {
        calls.Next();
        return new File(disk.Create(name), calls);
    }

    public void Rename(string from, string to)
    {
        calls.Next();
        disk.Rename(from, to);
    }

    public void Delete(string name)
    {
        calls.Next();
        disk.Delete(name);
    }

    public void SyncNames()
    {
        calls.Next();
        disk.SyncNames();
    }

    private sealed class File(IDiskFile file, Calls calls) : IDiskFile
    {
        public long Length => file.Length;

        public int Read(Span<byte> buffer, long at) => file.Read(buffer, at);

        public void Write(ReadOnlySpan<byte> bytes, long at)
        {
            var half = bytes[..(bytes.Length / 2)].ToArray();
            calls.Next(() => file.Write(half, at));
            file.Write(bytes, at);
        }

        public void SetLength(long length)
        {
            calls.Next();
            file.SetLength(length);
        }

        public void Sync()
        {
            calls.Next();
            file.Sync();
        }

        public void Dispose() => file.Dispose();
    }
}

/// <summary>Counts the calls that change something, and ends the process at one of them.</summary>
/// <param name="last">At which; 0 for none.</param>
internal sealed class Calls(int last)
{
    public int Count { get; private set; }

    /// <summary>One call more.</summary>
    /// <param name="half">What is done of it before the end.</param>
    public void Next(Action? half = null)
    {
        if (++Count == last)
        {
            half?.Invoke();
            using var self = Process.GetCurrentProcess();
            self.Kill();
            self.WaitForExit();
        }
    }
}
