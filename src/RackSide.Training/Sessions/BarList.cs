namespace RackSide.Training.Sessions;

/// <summary>What concerns both lifters on a bar, as a list over the one in turn: who goes now, form, and who leaves.</summary>
public static class BarList
{
    /// <summary>The lines to choose from, 1 first.</summary>
    public static IReadOnlyList<string> Lines(TwoOnOneBar b) =>
    [
        $"{b.Name(1 - b.Turn)} goes now",
        TwoOnOneBar.LastToLift(b) is var (lifter, _) ? $"{b.Name(lifter)}'s last set: the form {(b.Both[lifter].LastSet!.FormSlipped ? "held after all" : "slipped")}" : "no set is done yet",
        $"{b.Name(0)} leaves the bar; {b.Name(1)} goes on alone",
        $"{b.Name(1)} leaves the bar; {b.Name(0)} goes on alone",
    ];

    internal static BarStep Step(TwoOnOneBar b, SessionEvent e)
    {
        var closed = b with { ListOpen = false };
        return e switch
        {
            DigitTyped { Digit: 1 } => BarSteps.GoesNow(closed),
            DigitTyped { Digit: 2 } => BarSteps.TellForm(closed),
            DigitTyped { Digit: 3 or 4 } d => BarSteps.LeavesTheBar(closed, d.Digit - 3),
            DigitTyped { Digit: 0 } or BackAsked or MenuAsked => BarSteps.Plain(closed),
            UndoAsked or PointTyped or LeafAsked or LeaveAsked => BarSteps.Step(closed, e),
            _ => BarSteps.Plain(b),
        };
    }
}
