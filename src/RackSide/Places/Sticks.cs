namespace RackSide.Places;

/// <summary>USB sticks and other disks that are mounted where systems mount them: under /media, /run/media and /mnt.</summary>
internal static class Sticks
{
    /// <summary>Names a folder that is offered too, such as one on a disk of the network.</summary>
    public const string PlaceName = "RACKSIDE_STICK";

    private static readonly string[] Under = ["/media/", "/run/media/", "/mnt/"];

    /// <summary>Their folders; those of a name first, then by name.</summary>
    public static IReadOnlyList<string> Mounted(Func<string, string?> environment) =>
        [.. environment(PlaceName) is { Length: > 0 } named ? [Path.GetFullPath(named)] : (string[])[], .. Drives().Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Drives()
    {
        try
        {
            return DriveInfo.GetDrives().Select(d => d.RootDirectory.FullName.TrimEnd('/'))
                .Where(root => Under.Any(u => root.StartsWith(u, StringComparison.Ordinal)));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }
}
