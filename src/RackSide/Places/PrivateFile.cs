namespace RackSide.Places;

/// <summary>Files that only their owner may read.</summary>
internal static class PrivateFile
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    /// <summary>Writes a whole file; one of that name is replaced only once the new one is on disk.</summary>
    /// <exception cref="IOException">It could not be written; the old one is still there.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        var passing = path + ".tmp";
        try
        {
            using (var file = new FileStream(passing, Options()))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            File.Move(passing, path, overwrite: true);
        }
        catch
        {
            File.Delete(passing);
            throw;
        }
    }

    private static FileStreamOptions Options()
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = OwnerOnly;
        }

        return options;
    }
}
