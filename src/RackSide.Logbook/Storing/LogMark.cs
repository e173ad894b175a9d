using System.IO.Hashing;
using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Storing;

/// <summary>
/// The length and the checksum of a log that was verified, document by document, and then left at rest. A log that still has
/// them need not be verified so again: ten years of it are read past a checksum in a few milliseconds.
/// </summary>
/// <param name="Length">Bytes.</param>
/// <param name="Hash">XXH3 of all of them, 64 bits (xxHash specification, from the framework's own library).</param>
internal sealed record LogMark(long Length, long Hash)
{
    private const int AtOnce = 64 * 1024;

    /// <summary>The mark of a log's bytes.</summary>
    public static LogMark Of(ReadOnlySpan<byte> bytes) => new(bytes.Length, unchecked((long)XxHash3.HashToUInt64(bytes)));

    /// <summary>Whether a log has this mark and nothing stands in its write-ahead log.</summary>
    public bool IsOn(IDisk disk)
    {
        using (var writeAhead = disk.Exists(FileNames.WriteAhead) ? disk.Open(FileNames.WriteAhead) : null)
        {
            if (writeAhead?.Length > 0)
            {
                return false;
            }
        }

        using var file = disk.Open(FileNames.Main);
        return file.Length == Length && HashOf(file) == Hash;
    }

    private static long HashOf(IDiskFile file)
    {
        var (hash, buffer) = (new XxHash3(), new byte[AtOnce]);
        for (var at = 0L; file.Read(buffer, at) is > 0 and var read; at += read)
        {
            hash.Append(buffer.AsSpan(0, read));
        }

        return unchecked((long)hash.GetCurrentHashAsUInt64());
    }
}
