using NodaTime;
using RackSide.Logbook.Copies;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook;

/// <summary>
/// A folder of backups, each one file that holds a whole logbook, for its owner only. A backup has its name only once it
/// was written, synced, read back and verified.
/// </summary>
public sealed class Backups
{
    /// <summary>The folder of a logbook's own backups, beside its files.</summary>
    public const string FolderName = "backups";

    private readonly IDisk disk;

    /// <summary>The backups of a folder, which is made where it is missing.</summary>
    /// <exception cref="IOException">It cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public Backups(string folder)
        : this(new FolderDisk(folder))
    {
    }

    internal Backups(IDisk disk) => this.disk = disk;

    /// <summary>The backups that lie in a folder, oldest first, by file and date. Looking makes nothing.</summary>
    public static IReadOnlyList<(FileInfo File, LocalDate Date)> In(string folder) => Directory.Exists(folder)
        ? [.. new DirectoryInfo(folder).EnumerateFiles()
            .Select(f => (File: f, Name: BackupName.Of(f.Name))).Where(b => b.Name is not null)
            .OrderBy(b => b.Name).Select(b => (b.File, b.Name!.Date))]
        : [];

    /// <summary>Makes a backup of that date.</summary>
    /// <returns>The name of its file.</returns>
    /// <exception cref="IOException">It could not be written or does not read back; no file of that name is there then.</exception>
    public string Make(LogbookSnapshot of, LocalDate date) => Write(of, date).Text;

    /// <summary>Makes a backup, then lets go of those that no day, week or month needs and of the oldest beyond a limit.</summary>
    /// <param name="of">What to keep.</param>
    /// <param name="date">Today.</param>
    /// <param name="mostBytes">The most they may take all together.</param>
    /// <exception cref="IOException">It could not be written; those that were there are there still.</exception>
    public void Rotate(LogbookSnapshot of, LocalDate date, long mostBytes)
    {
        var made = Write(of, date);
        var all = Names().ToDictionary(b => b, b => Length(b.Text));
        var stay = Rotation.Stay(all, made, mostBytes);
        foreach (var gone in all.Keys.Where(b => !stay.Contains(b)))
        {
            disk.Delete(gone.Text);
        }

        disk.SyncNames();
    }

    /// <summary>Keeps a logbook under a name of its own, which no rotation touches.</summary>
    /// <returns>The name of its file.</returns>
    /// <exception cref="IOException">It could not be written.</exception>
    public string KeepAside(LogbookSnapshot of, string stem, LocalDate date)
    {
        var names = disk.Names().ToHashSet();
        var name = Enumerable.Range(1, int.MaxValue)
            .Select(n => $"{stem}-{NodaTime.Text.LocalDatePattern.Iso.Format(date)}{(n == 1 ? "" : $"-{n}")}.db").First(n => !names.Contains(n));
        Put(name, of.Image);
        return name;
    }

    private BackupName Write(LogbookSnapshot of, LocalDate date)
    {
        var last = Names().Where(b => b.Date == date).Select(b => b.Number).DefaultIfEmpty(0).Max();
        var name = new BackupName(date, last + 1);
        Put(name.Text, of.Image);
        return name;
    }

    private void Put(string name, byte[] image)
    {
        try
        {
            Replacing.WriteVerified(disk, name, image);
            disk.PutInPlace(name);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or DamagedFileException)
        {
            Replacing.LetGo(disk, name);
            throw new IOException($"no backup could be written to {disk.Folder} ({e.Message.Split(" : '")[0].TrimEnd('.')})", e);
        }
    }

    private IEnumerable<BackupName> Names() => disk.Names().Select(BackupName.Of).OfType<BackupName>();

    private long Length(string name)
    {
        using var file = disk.Open(name);
        return file.Length;
    }
}
