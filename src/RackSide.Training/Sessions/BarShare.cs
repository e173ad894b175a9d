using RackSide.Training.Loading;

namespace RackSide.Training.Sessions;

/// <summary>What a session knows of the lifter it shares the bar with.</summary>
/// <param name="With">The other's name.</param>
/// <param name="Ahead">
/// The sets of both that follow the one in hand on the bar, in order; null where the other is not at the bar, and only the
/// lifter's own sets count.
/// </param>
public sealed record BarShare(string With, IReadOnlyList<BarAhead>? Ahead);

/// <summary>A set that follows on a shared bar.</summary>
/// <param name="Set">What it asks for.</param>
/// <param name="Stays">Whether it is a working set like the one in hand, so that a load changed now is meant for it too.</param>
public sealed record BarAhead(BarSet Set, bool Stays);
