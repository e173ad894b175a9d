namespace RackSide.Logbook.Disks;

/// <summary>A folder of the file system, for its owner only: the folder 0700, its files 0600.</summary>
internal sealed class FolderDisk : IDisk
{
    private const UnixFileMode OwnersFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode OwnersFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>That folder, created where it is missing.</summary>
    public FolderDisk(string folder)
    {
        Folder = Path.GetFullPath(folder);
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(Folder);
        }
        else
        {
            Directory.CreateDirectory(Folder, OwnersFolder);
        }
    }

    /// <summary>That folder, or null where it is missing.</summary>
    public static FolderDisk? IfThere(string folder) => Directory.Exists(folder) ? new FolderDisk(folder) : null;

    /// <inheritdoc/>
    public string Folder { get; }

    /// <inheritdoc/>
    public IDisposable? Lock(string name)
    {
        try
        {
            return Open(name, FileMode.OpenOrCreate);
        }
        catch (IOException e) when (IsHeldElsewhere(e.HResult))
        {
            return null;
        }
    }

    /// <inheritdoc/>
    public bool Exists(string name) => File.Exists(At(name));

    /// <inheritdoc/>
    public IDiskFile Open(string name) => new FolderFile(Open(name, FileMode.OpenOrCreate));

    /// <inheritdoc/>
    public IDiskFile Create(string name) => new FolderFile(Open(name, FileMode.Create));

    /// <inheritdoc/>
    public void Rename(string from, string to) => File.Move(At(from), At(to), overwrite: true);

    /// <inheritdoc/>
    public void Delete(string name) => File.Delete(At(name));

    /// <inheritdoc/>
    public IReadOnlyList<string> Names() => [.. Directory.EnumerateFiles(Folder).Select(path => Path.GetFileName(path))];

    /// <inheritdoc/>
    public void SyncNames()
    {
        // Windows has no such call and needs none: its file systems journal names.
        if (!OperatingSystem.IsWindows())
        {
            FolderSync.Run(Folder);
        }
    }

    // EWOULDBLOCK on Linux and on macOS, ERROR_SHARING_VIOLATION on Windows. Anything else (a full disk, no permission)
    // is not a second window and must not be told as one.
    private static bool IsHeldElsewhere(int code) => code is 11 or 35 or unchecked((int)0x80070020);

    private FileStream Open(string name, FileMode mode)
    {
        var options = new FileStreamOptions
        {
            Mode = mode,
            Access = FileAccess.ReadWrite,
            Share = FileShare.None,
            BufferSize = 0,
        };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnersFile;
        }

        return new FileStream(At(name), options);
    }

    private string At(string name) => Path.Combine(Folder, name);
}
