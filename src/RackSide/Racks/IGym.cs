using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Racks;

/// <summary>The gym's events, wherever they are kept.</summary>
internal interface IGym
{
    /// <summary>The gym's identity.</summary>
    /// <exception cref="GymTrouble">It cannot be had.</exception>
    string Identity();

    /// <summary>Adds events; one that is there already stays as it is.</summary>
    /// <exception cref="GymTrouble">Nobody can tell whether they arrived; send them again.</exception>
    void Push(IReadOnlyList<GymEvent> events);

    /// <summary>Erases a lifter for good.</summary>
    /// <exception cref="GymTrouble">Nobody can tell whether it was; ask again.</exception>
    void Erase(LifterErased erased);

    /// <summary>Events after a number, in the gym's order.</summary>
    /// <exception cref="GymTrouble">They cannot be had.</exception>
    IReadOnlyList<(long Position, string Line)> Pull(long after, int most);

    /// <summary>The identity of the event of that number; null where there is none any more.</summary>
    /// <exception cref="GymTrouble">It cannot be had.</exception>
    FactId? At(long position);
}

/// <summary>Something stands between this rack and its gym: an exit code and one sentence. Nothing is lost by it.</summary>
internal sealed class GymTrouble(int code, string sentence) : Exception(sentence)
{
    /// <summary>The exit code; see <see cref="ExitCode"/>.</summary>
    public int Code { get; } = code;
}
