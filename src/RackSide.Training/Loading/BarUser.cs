using NodaTime;

namespace RackSide.Training.Loading;

/// <summary>One of two lifters who share a bar.</summary>
/// <param name="Name">The name on the screen.</param>
/// <param name="Sets">What is still to do, in the lifter's own order, which is kept; empty for one who is done or has left.</param>
public sealed record BarUser(string Name, IReadOnlyList<SharedSet> Sets);

/// <summary>A set on a shared bar.</summary>
/// <param name="Band">The loads that will do, in the lifter's own unit.</param>
/// <param name="RestBefore">The rest that the lifter's plan asks for between the set before and this one; zero within a ramp.</param>
public readonly record struct SharedSet(LoadBand Band, Duration RestBefore);

/// <summary>A set in the order of two lifters.</summary>
/// <param name="Lifter">0 or 1.</param>
/// <param name="Set">Its place in the lifter's own sets, from 0.</param>
public readonly record struct BarTurn(int Lifter, int Set);

/// <summary>Whose set comes when on a shared bar.</summary>
/// <param name="Turns">All sets of both, in order.</param>
/// <param name="Plan">The stacks, one for each turn.</param>
/// <param name="Why">One sentence: why in this order.</param>
public sealed record TurnOrder(IReadOnlyList<BarTurn> Turns, PlatePlan Plan, string Why);
