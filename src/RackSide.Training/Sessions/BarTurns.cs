using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;

namespace RackSide.Training.Sessions;

/// <summary>
/// Whose turn it is. Where both are at the bar for the same motion, the order of <see cref="SharedBar"/> says; where the bar
/// would have to be carried, the one at whose motion it stands goes on until done there; where they are not both at the bar,
/// nobody waits for the other, and the one whose rest is over first is next. Decided here.
/// </summary>
internal static class BarTurns
{
    /// <summary>Passes the turn after something was written.</summary>
    /// <param name="b">Both.</param>
    /// <param name="last">Who was in turn; null where nobody was yet.</param>
    public static TwoOnOneBar Pass(TwoOnOneBar b, int? last)
    {
        var natural = Natural(b, last);
        return Given(b, natural.Lifter, natural.Why, natural.Order);
    }

    /// <summary>Gives the turn to one of them, whatever the rule says.</summary>
    public static TwoOnOneBar To(TwoOnOneBar b, int lifter, string why) =>
        Given(b, lifter, why, b.Gone[1 - lifter] ? null : OrderFrom(States(b), lifter, b.InTurn.OnBar, TwoOnOneBar.SetsInOrder(b)));

    /// <summary>The order in which this lifter is next: the best one where that is so anyway, or else the best that begins so.</summary>
    /// <returns>The order; null where they are not both at the bar for the same motion and on the same bar.</returns>
    public static TurnOrder? OrderFrom(
        IReadOnlyList<LifterAtBar> at, int lifter, BarStack? onBar, IReadOnlyList<(int Lifter, SetDone Set)> done)
    {
        var (order, first) = Natural(at, onBar, done);
        return order is null ? null : Mapped(order.Turns[0], first) == lifter
            ? Turned(order, first)
            : SharedBar.Order(Job(at, onBar), at[lifter].User, at[1 - lifter].User, mayBegin: false) is { } forced ? Turned(forced, lifter) : null;
    }

    private static (int Lifter, string Why, TurnOrder? Order) Natural(TwoOnOneBar b, int? last)
    {
        if (b.Alone)
        {
            return (b.Gone[0] ? 1 : 0, "", null);
        }

        if (Finished(b, last) is { } finished)
        {
            return finished;
        }

        var (at, done) = (States(b), TwoOnOneBar.SetsInOrder(b));
        if (at.Any(a => a.Queue is null))
        {
            return ReadyFirst(b, last);
        }

        var (order, first) = Natural(at, b.InTurn.OnBar, done);
        return order is not null ? (Mapped(order.Turns[0], first), order.Why, Turned(order, first))
            : SameMotion(at) ? ((1 - last) ?? 0, "in turn", null)
            : Holder(b, at, done, last);
    }

    /// <summary>Who is through closes the session there and then; after that the one who still has something to do is shown.</summary>
    private static (int, string, TurnOrder?)? Finished(TwoOnOneBar b, int? last)
    {
        bool[] through = [.. b.Both.Select(s => s.Place.Current is null)];
        return !through[0] && !through[1] ? null
            : last is { } l && through[l] ? (l, $"{b.Name(l)} has done everything", null)
            : (through[0] ? 1 : 0, "", null);
    }

    private static (int, string, TurnOrder?) ReadyFirst(TwoOnOneBar b, int? last)
    {
        var (zero, one) = (Ready(b.Both[0]), Ready(b.Both[1]));
        var (next, why) = zero == one ? ((1 - last) ?? 0, "in turn") : (zero < one ? 0 : 1, "whose rest is over first");
        return (next, why, null);
    }

    /// <summary>When a lifter can go on: at once, when the rest ends, or not before a held clock is let go.</summary>
    private static Instant Ready(Session s) => Uncovered(s.Phase) is Resting { Clock: var clock } ? clock.Ends ?? Instant.MaxValue : s.Now;

    private static Phase Uncovered(Phase phase) => phase switch { Choosing c => c.Under, Reading r => r.Under, _ => phase };

    private static (int, string, TurnOrder?) Holder(
        TwoOnOneBar b, IReadOnlyList<LifterAtBar> at, IReadOnlyList<(int Lifter, SetDone Set)> done, int? last)
    {
        var stands = done.Reverse().Select(d => Motion(b.Both[d.Lifter], d.Set)).FirstOrDefault(m => m is not null);
        var holds = Enumerable.Range(0, 2).Where(i => at[i].Queue!.Motion == stands).ToList();
        return holds is [var holder]
            ? (holder, $"the bar stays where it is until {b.Name(holder)} is done there", null)
            : ReadyFirst(b, last);
    }

    private static Motion? Motion(Session s, SetDone set) =>
        s.Setting.Catalogue.Find(set.Exercise) is { LoadType: LoadType.Barbell } exercise ? exercise.Motion : null;

    private static (TurnOrder? Order, int First) Natural(
        IReadOnlyList<LifterAtBar> at, BarStack? onBar, IReadOnlyList<(int Lifter, SetDone Set)> done)
    {
        if (!SameMotion(at) || at[0].Queue!.Bar != at[1].Queue!.Bar)
        {
            return (null, 0);
        }

        var lastToLift = done is [.., var newest] ? newest.Lifter : 1;
        var run = done.Reverse().TakeWhile(d => d.Lifter == lastToLift).Count();
        return (SharedBar.Order(Job(at, onBar), at[1 - lastToLift].User, at[lastToLift].User, run: Math.Min(run, 2)), 1 - lastToLift);
    }

    private static bool SameMotion(IReadOnlyList<LifterAtBar> at) =>
        at.All(a => a.Queue is not null) && at[0].Queue!.Motion == at[1].Queue!.Motion;

    private static PlateJob Job(IReadOnlyList<LifterAtBar> at, BarStack? onBar) =>
        PlateJob.On(at[0].Queue!.Bar, at[0].Setting.Kit, [], onBar);

    private static int Mapped(BarTurn turn, int first) => turn.Lifter == 0 ? first : 1 - first;

    private static TurnOrder Turned(TurnOrder order, int first) =>
        order with { Turns = [.. order.Turns.Select(t => t with { Lifter = Mapped(t, first) })] };

    private static IReadOnlyList<LifterAtBar> States(TwoOnOneBar b) =>
        [.. b.Both.Select((s, i) => new LifterAtBar(b.Name(i), s.Setting, BarQueue.Of(s.Setting, s.Place)))];

    /// <summary>The turn is given: the other's sets count on the bar, and the screen of the one in turn begins now.</summary>
    private static TwoOnOneBar Given(TwoOnOneBar b, int lifter, string why, TurnOrder? order)
    {
        var at = States(b);
        var inTurn = b.Both[lifter];
        var begun = inTurn.Phase is Lifting lifting && (lifter != b.Turn || b.Order != order)
            ? inTurn with { Phase = lifting with { Since = inTurn.Now, Doubt = null } }
            : inTurn;
        var share = b.Gone[1 - lifter] ? null : new BarShare(b.Name(1 - lifter), order is null ? null : Ahead(at, order));
        return b.With(lifter, begun with { Share = share }) with { Turn = lifter, Why = why, Order = order };
    }

    internal static IReadOnlyList<BarAhead> Ahead(IReadOnlyList<LifterAtBar> at, TurnOrder order)
    {
        var inHand = at[order.Turns[0].Lifter].Queue!.Sets[order.Turns[0].Set].Item;
        return [.. order.Turns.Skip(1).Select(t => (at[t.Lifter].Setting, Next: at[t.Lifter].Queue!.Sets[t.Set]))
            .Select(s => BarQueue.Ahead(s.Setting, inHand, s.Next.Item, s.Next.Set.Band.Ideal))];
    }
}

/// <summary>A lifter as the order of turns sees one.</summary>
/// <param name="Name">The name on the screen.</param>
/// <param name="Setting">What the session is held against.</param>
/// <param name="Queue">The sets at the bar; null where the lifter is elsewhere.</param>
internal sealed record LifterAtBar(string Name, SessionSetting Setting, BarQueue? Queue)
{
    /// <summary>As one of two at the bar.</summary>
    public BarUser User => Queue!.User(Name);
}
