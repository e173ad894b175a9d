using System.Text;
using NodaTime;
using RackSide.Logbook;
using RackSide.Places;

namespace RackSide.Arrivals;

/// <summary>
/// The first pages of today and the coming days, kept beside the logbook when a stay ends. The next start paints one before
/// it has opened anything. What they rest on is told by the lengths and times of files, which is quick and may be wrong; so
/// nothing but that painting rests on them, and the page that is reckoned from the logbook takes their place at once.
/// </summary>
internal static class KeptPages
{
    /// <summary>The file's name in the logbook's folder.</summary>
    public const string FileName = "first-pages";

    // It grows when the bytes change.
    private const string Form = "first pages 1";

    // More than the room of a window could need means that the file is something else.
    private const int LongestFile = 4 * 1024 * 1024;

    /// <summary>The page for a moment; null where none is kept, or something that it rests on has changed.</summary>
    public static KeptPage? Find(Folders folders, Instant now)
    {
        try
        {
            var file = new FileInfo(In(folders));
            if (!file.Exists || file.Length > LongestFile)
            {
                return null;
            }

            using var from = new BinaryReader(new MemoryStream(File.ReadAllBytes(file.FullName)), Encoding.UTF8);
            return from.ReadString() == Stamp(folders) ? Pages(from).FirstOrDefault(p => p.Holds(now)) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or FormatException)
        {
            // Without it the start takes its time, and that is all.
            return null;
        }
    }

    /// <summary>Keeps pages in the place of those that were kept. Call it when everything that they rest on is on disk and closed.</summary>
    public static void Keep(Folders folders, IReadOnlyCollection<KeptPage> pages)
    {
        try
        {
            using var bytes = new MemoryStream();
            using (var to = new BinaryWriter(bytes, Encoding.UTF8, leaveOpen: true))
            {
                to.Write(Stamp(folders));
                to.Write7BitEncodedInt(pages.Count);
                foreach (var page in pages)
                {
                    to.Write(page);
                }
            }

            PrivateFile.Write(In(folders), bytes.ToArray());
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A full disk needs the room for other things.
        }
    }

    /// <summary>Deletes what is kept: a name stands on it.</summary>
    /// <exception cref="IOException">It is still there.</exception>
    public static void Forget(Folders folders) => File.Delete(In(folders));

    private static IEnumerable<KeptPage> Pages(BinaryReader from)
    {
        for (var left = from.Read7BitEncodedInt(); left > 0; left--)
        {
            yield return from.ReadPage();
        }
    }

    private static string In(Folders folders) => Path.Combine(folders.Data, FileName);

    private static string Stamp(Folders folders) => string.Join('\n', LiteLogbook.Files
        .Select(name => Path.Combine(folders.Data, name))
        .Append(folders.GymFile)
        .Concat(new[] { Environment.ProcessPath, Path.Combine(AppContext.BaseDirectory, "rackside.dll") }.OfType<string>())
        .Select(Stamp)
        .Prepend(Form));

    private static string Stamp(string path) => new FileInfo(path) is { Exists: true } file
        ? FormattableString.Invariant($"{file.Length} {file.LastWriteTimeUtc.Ticks}")
        : "none";
}
