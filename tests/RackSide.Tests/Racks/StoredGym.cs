using RackSide.Logbook;
using RackSide.Racks;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>A gym in memory with the meaning of src/RackSide.Server/Schema: insert or ignore, numbers in order, erased for good.</summary>
internal sealed class StoredGym : IGym
{
    private readonly Dictionary<FactId, (long Position, string Lifter, string Line, bool Erasure)> events = [];
    private readonly HashSet<string> erased = [];
    private long last;

    /// <summary>How many events it keeps.</summary>
    public int Count => events.Count;

    /// <summary>All of them, in order.</summary>
    public IEnumerable<GymEvent> Events => events.Values.OrderBy(e => e.Position).Select(e => GymEventText.Read(e.Line));

    /// <inheritdoc/>
    public string Identity() => "the-tollbooth";

    /// <inheritdoc/>
    public void Push(IReadOnlyList<GymEvent> added)
    {
        foreach (var one in added.Where(e => !erased.Contains(e.Lifter)))
        {
            // A number is used up by an event that is there already, as the server's are.
            events.TryAdd(one.Id, (++last, one.Lifter, GymEventText.Write(one), false));
        }
    }

    /// <inheritdoc/>
    public void Erase(LifterErased one)
    {
        erased.Add(one.Lifter);
        foreach (var id in events.Where(e => e.Value.Lifter == one.Lifter && !e.Value.Erasure).Select(e => e.Key).ToList())
        {
            events.Remove(id);
        }

        events.TryAdd(one.Id, (++last, one.Lifter, GymEventText.Write(one), true));
    }

    /// <inheritdoc/>
    public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) =>
        [.. events.Values.Where(e => e.Position > after).OrderBy(e => e.Position).Take(most).Select(e => (e.Position, e.Line))];

    /// <inheritdoc/>
    public FactId? At(long position) => events.Where(e => e.Value.Position == position).Select(e => (FactId?)e.Key).FirstOrDefault();
}
