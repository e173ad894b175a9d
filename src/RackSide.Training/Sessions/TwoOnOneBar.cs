using System.Collections.Immutable;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Loading;

namespace RackSide.Training.Sessions;

/// <summary>
/// Two lifters who share a bar, and one screen: a session each, and whose turn it is. Keys go to the one in turn; a set
/// passes the turn. Nothing of it is kept but that they share: each session's facts are its own.
/// </summary>
public sealed record TwoOnOneBar
{
    /// <summary>The two sessions.</summary>
    public required ImmutableArray<Session> Both { get; init; }

    /// <summary>Whose turn it is: 0 or 1.</summary>
    public int Turn { get; init; }

    /// <summary>Why it is that turn, in a sentence.</summary>
    public string Why { get; init; } = "";

    /// <summary>The order of the sets of both where both are at the bar, the one in turn first; null elsewhere.</summary>
    public TurnOrder? Order { get; init; }

    /// <summary>Who has closed the session or left the bar; the other then has it alone.</summary>
    public ImmutableArray<bool> Gone { get; init; } = [false, false];

    /// <summary>Whether the list of what concerns both lies over the session in turn.</summary>
    public bool ListOpen { get; init; }

    /// <summary>The session in turn.</summary>
    public Session InTurn => Both[Turn];

    /// <summary>The other session.</summary>
    public Session Other => Both[1 - Turn];

    /// <summary>Whether one of them has the bar alone.</summary>
    public bool Alone => Gone[0] || Gone[1];

    /// <summary>What a lifter is called here: the first name, or the whole one where both have the same.</summary>
    public string Name(int lifter)
    {
        var names = Both.Select(s => s.Setting.Lifter.Name.Split(' ')[0]).ToList();
        return names[0] == names[1] ? Both[lifter].Setting.Lifter.Name : names[lifter];
    }

    /// <summary>
    /// Two sessions that share a bar from now on, or go on sharing it after the program was stopped: what is on the bar and
    /// whose turn it is are found again from the facts of both.
    /// </summary>
    /// <param name="one">A session as it begins or is resumed; of two beginners this one is first in turn.</param>
    /// <param name="two">The other.</param>
    public static TwoOnOneBar Of(Session one, Session two)
    {
        var next = one.NextId.CompareTo(two.NextId) > 0 ? one.NextId : two.NextId;
        var both = new TwoOnOneBar { Both = [one with { NextId = next }, two with { NextId = next }] };
        var onBar = SharedFold.OnBar(both);
        both = both with { Both = [.. both.Both.Select((s, i) => s with { OnBar = onBar, Share = new BarShare(both.Name(1 - i), null) })] };
        return BarTurns.Pass(both, LastToLift(both)?.Lifter);
    }

    /// <summary>The newest set that stands, and whose it is; null where nothing is lifted.</summary>
    public static (int Lifter, SetDone Set)? LastToLift(TwoOnOneBar both) => SetsInOrder(both) is [.., var last] ? last : null;

    internal static IReadOnlyList<(int Lifter, SetDone Set)> SetsInOrder(TwoOnOneBar both) =>
        [.. both.Both.SelectMany((s, i) => s.Place.Sets.Select(r => (Lifter: i, r.Set))).OrderBy(s => s.Set.Id)];

    internal TwoOnOneBar With(int lifter, Session session) => this with { Both = Both.SetItem(lifter, session) };
}

/// <summary>What a step gives: both after it, and what each session asks of the world, in order.</summary>
/// <param name="Both">After the step.</param>
/// <param name="Effects">Whose, and what.</param>
public readonly record struct BarStep(TwoOnOneBar Both, ImmutableList<(int Lifter, Effect Effect)> Effects);
