using RackSide.Visits;

namespace RackSide.Commands;

/// <summary>What is said, and asked, after the screen has gone and entries are not on disk.</summary>
internal static class Unwritten
{
    /// <summary>The sentence. Where somebody is there and no copy was made, a folder for one is asked for first.</summary>
    public static string Told(Surroundings around, Gym gym, RackVisit visit, bool asks)
    {
        var count = CountsText.Count(visit.Unwritten.Count, "entry", "entries");
        if (visit.CopiedTo is null && asks)
        {
            Offer(around, visit, count);
        }

        return visit.CopiedTo is { } copy
            ? $"{count} could not be written to {gym.Folders.Data}; they are in {copy}. Free some space there, then: rackside restore {copy}"
            : $"{count} could not be written to {gym.Folders.Data}; free some space and enter them again";
    }

    private static void Offer(Surroundings around, RackVisit visit, string count)
    {
        while (visit.CopiedTo is null && around.Ask($"{count} not on disk. A folder for a copy that has them, or ENTER alone to give them up: ") is { Length: > 0 } folder)
        {
            try
            {
                visit.CopyTo(Path.GetFullPath(folder.Trim()));
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException)
            {
                around.Error.Print(PlainText.Wrap($"rackside: {e.Message}"));
            }
        }
    }
}
