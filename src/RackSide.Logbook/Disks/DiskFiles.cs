namespace RackSide.Logbook.Disks;

/// <summary>Whole files, read and put in place so that a power cut leaves the old one or the new one.</summary>
internal static class DiskFiles
{
    /// <summary>Every byte of a file.</summary>
    /// <exception cref="IOException">It could not be read to its end.</exception>
    public static byte[] ReadAll(this IDiskFile file)
    {
        var bytes = new byte[file.Length];
        for (var done = 0; done < bytes.Length;)
        {
            var read = file.Read(bytes.AsSpan(done), done);
            done += read > 0 ? read : throw new IOException("the file ended before its length");
        }

        return bytes;
    }

    /// <summary>Every byte of a named file, or null where there is none.</summary>
    public static byte[]? ReadAll(this IDisk disk, string name)
    {
        if (!disk.Exists(name))
        {
            return null;
        }

        using var file = disk.Open(name);
        return file.ReadAll();
    }

    /// <summary>Writes a file under a passing name and syncs it.</summary>
    public static void WriteBeside(this IDisk disk, string name, ReadOnlySpan<byte> bytes)
    {
        using var file = disk.Create(Passing(name));
        file.Write(bytes, 0);
        file.Sync();
    }

    /// <summary>Gives what <see cref="WriteBeside"/> wrote its lasting name.</summary>
    public static void PutInPlace(this IDisk disk, string name)
    {
        disk.Rename(Passing(name), name);
        disk.SyncNames();
    }

    /// <summary>The name a file has until it is whole.</summary>
    public static string Passing(string name) => name + ".tmp";
}
