using RackSide.Logbook;
using RackSide.Pages.Rack;

namespace RackSide.Visits;

/// <summary>What could not be put on disk goes to another place: a copy of the whole logbook with it, which restore brings back.</summary>
/// <param name="gym">The gym.</param>
/// <param name="places">Gives the places there are now.</param>
internal sealed class Rescue(Gym gym, Func<IReadOnlyList<string>> places)
{
    /// <summary>The last copy made; null where none was.</summary>
    public string? CopiedTo { get; private set; }

    /// <summary>The page that asks, once a copy was tried there.</summary>
    public UnwrittenConversation Ask(TrainingVisit left, string place)
    {
        string said;
        try
        {
            said = $"Copy written: {CopyTo(place, left.Unwritten)}. It has all entries; rackside restore brings it back.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            said = $"No copy could be written to {place}: {(e.InnerException ?? e).Message.Split(" : '")[0].TrimEnd('.')}.";
        }

        return Ask(left, said, copied: CopiedTo is not null);
    }

    /// <summary>The page that asks.</summary>
    public UnwrittenConversation Ask(TrainingVisit left) => Ask(left, said: null, copied: false);

    /// <summary>Writes the logbook with these facts into a folder.</summary>
    /// <returns>The file.</returns>
    /// <exception cref="IOException">It could not be written.</exception>
    public string CopyTo(string folder, IReadOnlyList<SessionEntry> unwritten)
    {
        var name = new Backups(folder).Make(gym.Snapshot()!.With(unwritten), gym.Today);
        return CopiedTo = Path.Combine(folder, name);
    }

    private UnwrittenConversation Ask(TrainingVisit left, string? said, bool copied) =>
        new(() => (left.Unwritten.Count, left.Trouble), places, canGoBack: !left.IsClosed, said, copied);
}
