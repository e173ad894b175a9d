using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>
/// Taking back the last thing written: a new fact strikes it, nothing is deleted. What one key wrote at one instant is
/// taken back together. There is no end to it inside the session.
/// </summary>
public static class Undoing
{
    /// <summary>What the undo key would take back, in words; null where there is nothing.</summary>
    public static string? Next(Session s) => Group(s) is [.., var last] group ? Words(last, group.Count) : null;

    internal static Turn Last(Session s)
    {
        var group = Group(s);
        if (group.Count == 0)
        {
            return ((Turn)s).Say("nothing to take back in this session");
        }

        return group.Aggregate((Turn)s, (turn, fact) => turn.Keep((id, at) => new FactStruck(id, at, fact.Id)))
            .Proceed()
            .Say($"taken back: {Words(group[^1], group.Count)}");
    }

    private static List<Fact> Group(Session s)
    {
        var takable = s.Record.Standing.Where(f => f is SetDone or RepsLeftTold or ItemTicked or SlotLeftOut or ExerciseSwapped or SoreTold or HeadDownAnswered).ToList();
        return takable.Count == 0 ? [] : [.. takable.Where(f => f.At == takable[^1].At && f.GetType() == takable[^1].GetType())];
    }

    private static string Words(Fact fact, int count) => fact switch
    {
        SetDone { Kind: SetKind.WarmUp } set => $"warm-up set {set.Number}",
        SetDone { Kind: SetKind.Hold, Side: { } side } set => $"hold {set.Number} {(side == Side.Left ? "left" : "right")}, {set.Done} s",
        SetDone { Kind: SetKind.Hold or SetKind.HeldShare } set => $"hold {set.Number}, {set.Done} s",
        SetDone set => $"set {set.Number}, {set.Done} reps",
        RepsLeftTold told => $"answer, {told.Left} left",
        SlotLeftOut => count > 1 ? $"{count} left out" : "left out",
        ExerciseSwapped => "the other exercise",
        SoreTold => "told sore",
        HeadDownAnswered => "the answer before head-down work",
        _ => count > 1 ? $"{count} ticks" : "a tick",
    };
}
