using RackSide.Logbook;
using RackSide.Training.History;

namespace RackSide.Visits;

/// <summary>
/// What sessions begin with. It is on disk before their first page is shown; where the disk takes nothing, the session
/// begins in memory and what is not written goes to its writer, which keeps trying.
/// </summary>
/// <param name="logbook">Where to.</param>
internal sealed class FirstEntries(ILogbook logbook)
{
    private readonly List<SessionEntry> unwritten = [];

    /// <summary>What no disk took, in its order.</summary>
    public IReadOnlyList<SessionEntry> Unwritten => unwritten;

    /// <summary>Writes one; nothing overtakes one that could not be written.</summary>
    public void Write(SessionEntry entry)
    {
        if (unwritten.Count > 0 || !TryWrite(entry))
        {
            unwritten.Add(entry);
        }
    }

    private bool TryWrite(SessionEntry entry)
    {
        try
        {
            logbook.Write(entry);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
