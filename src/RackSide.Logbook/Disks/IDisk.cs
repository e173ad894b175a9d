namespace RackSide.Logbook.Disks;

/// <summary>
/// The folder the logbook lives in, with only the calls whose order decides what a power cut leaves behind. It is a seam
/// because the tests replay every prefix, loss and tear of those calls.
/// </summary>
internal interface IDisk
{
    /// <summary>Where it is, for sentences.</summary>
    string Folder { get; }

    /// <summary>Takes the lock until disposed; null where another process holds it.</summary>
    IDisposable? Lock(string name);

    /// <summary>Whether a file of that name is there.</summary>
    bool Exists(string name);

    /// <summary>Opens a file, or creates it empty, for nobody else.</summary>
    IDiskFile Open(string name);

    /// <summary>Creates a file, or empties it, for nobody else.</summary>
    IDiskFile Create(string name);

    /// <summary>Gives a file another name, replacing what had it. Lasting only after <see cref="SyncNames"/>.</summary>
    void Rename(string from, string to);

    /// <summary>Takes a file's name away, where it is there. Lasting only after <see cref="SyncNames"/>.</summary>
    void Delete(string name);

    /// <summary>The names of the files in it.</summary>
    IReadOnlyList<string> Names();

    /// <summary>Makes created, renamed and deleted names lasting.</summary>
    void SyncNames();
}

/// <summary>An open file, read and written at offsets.</summary>
internal interface IDiskFile : IDisposable
{
    /// <summary>Its length in bytes.</summary>
    long Length { get; }

    /// <summary>Reads up to the end of the buffer; returns how many bytes, 0 at the end of the file.</summary>
    int Read(Span<byte> buffer, long at);

    /// <summary>Writes all bytes; lasting only after <see cref="Sync"/>.</summary>
    void Write(ReadOnlySpan<byte> bytes, long at);

    /// <summary>Cuts or grows it.</summary>
    void SetLength(long length);

    /// <summary>Returns when everything written is on the device.</summary>
    void Sync();
}
