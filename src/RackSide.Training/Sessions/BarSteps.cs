using System.Collections.Immutable;
using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Sessions;

/// <summary>
/// The one way two sessions on one bar change: an event in, both sessions after it and what the world is asked to do out.
/// Time reaches both; a key reaches the one in turn, but undo and the word on form concern the newest set, whoever did it.
/// </summary>
public static class BarSteps
{
    /// <summary>Takes an event.</summary>
    public static BarStep Step(TwoOnOneBar b, SessionEvent e) => e switch
    {
        FactWritten w => Written(b, w.Fact, e),
        WriteFailed f => Written(b, f.Fact, e),
        Ticked => Tick(b, e),
        _ when b.Alone => Keyed(b, e),
        _ when b.ListOpen => BarList.Step(b, e),
        OtherAsked when b.InTurn.Phase is Choosing { What: Choice.Menu, Under: var under } =>
            Plain(b.With(b.Turn, b.InTurn with { Phase = under }) with { ListOpen = true }),
        DigitTyped { Digit: 2 } when b.InTurn.Phase is Resting => GoesNow(b),
        DigitTyped { Digit: 1 } when b.InTurn.Phase is Resting => TellForm(b),
        UndoAsked or PointTyped when UndoConcerns(b) is { } owner && owner != b.Turn => UndoOf(b, owner, e),
        _ => Keyed(b, e),
    };

    /// <summary>The other goes now, out of turn: whoever feels ready may, and rest that is cut short is the lifter's own word.</summary>
    internal static BarStep GoesNow(TwoOnOneBar b) =>
        Plain(BarTurns.To(b, 1 - b.Turn, $"{b.Name(1 - b.Turn)} goes now, as asked for"));

    /// <summary>The form of the newest set slipped, or held after all.</summary>
    internal static BarStep TellForm(TwoOnOneBar b)
    {
        if (TwoOnOneBar.LastToLift(b) is not var (lifter, set))
        {
            return Keyed(b, new OddKey(b.InTurn.Now));
        }

        if (lifter == b.Turn && b.InTurn.Phase is Resting)
        {
            return Keyed(b, new DigitTyped(b.InTurn.Now, 1));
        }

        var told = FormTelling.Toggle(b.Both[lifter], set.Id);
        return Merge(b, lifter, told) is var step ? step with { Both = Said(step.Both, $"{b.Name(lifter)}: {told.Session.Notice?.Text}") } : default;
    }

    /// <summary>One leaves the bar: that session stays open for another day or place, and the other goes on alone.</summary>
    internal static BarStep LeavesTheBar(TwoOnOneBar b, int lifter)
    {
        var step = Merge(b, lifter, ((Turn)b.Both[lifter]).Keep((id, at) => new BarLeft(id, at)));
        var alone = BarTurns.Pass(step.Both with { Gone = b.Gone.SetItem(lifter, true) }, lifter);
        return step with { Both = Said(alone, $"{b.Name(lifter)} has left the bar; that session stays open") };
    }

    internal static BarStep Plain(TwoOnOneBar b) => new(b, []);

    private static TwoOnOneBar Said(TwoOnOneBar b, string text) => b.With(b.Turn, ((Turn)b.InTurn).Say(text).Session);

    /// <summary>Time passes for both. Only the one in turn is called: a bell for the other would hurry the one under the bar.</summary>
    private static BarStep Tick(TwoOnOneBar b, SessionEvent e)
    {
        var step = Plain(b);
        for (var i = 0; i < 2; i++)
        {
            if (!b.Gone[i])
            {
                var turn = SessionSteps.Step(step.Both.Both[i], e);
                step = new(step.Both.With(i, turn.Session), i == b.Turn ? step.Effects.AddRange(turn.Effects.Select(x => (i, x))) : step.Effects);
            }
        }

        return step;
    }

    private static BarStep Written(TwoOnOneBar b, FactId fact, SessionEvent e)
    {
        var owner = b.Both[1].Unwritten.Contains(fact) ? 1 : 0;
        return Plain(b.With(owner, SessionSteps.Step(b.Both[owner], e).Session));
    }

    private static BarStep Keyed(TwoOnOneBar b, SessionEvent e)
    {
        var (turn, before) = (SessionSteps.Step(b.InTurn, e), b.InTurn);
        var step = Merge(b, b.Turn, turn);
        var kept = turn.Session.Facts.Skip(before.Facts.Count).ToList();
        if (turn.Session.Phase is Ended && turn.Effects.Any(x => x is Leave))
        {
            return Closed(step, b.Turn);
        }

        return step with
        {
            Both = kept.Any(f => f is FactStruck) ? BarTurns.To(step.Both, b.Turn, "taken back")
                : kept.Any(f => f is SetDone or RepsLeftTold or ItemTicked or SlotLeftOut or ExerciseSwapped) && !KeepsTheTurn(turn.Session) ? BarTurns.Pass(step.Both, b.Turn)
                : step.Both,
        };
    }

    /// <summary>Who closes the session is gone, and leaving is only the end of the stay once both are.</summary>
    private static BarStep Closed(BarStep step, int lifter)
    {
        var b = step.Both with { Gone = step.Both.Gone.SetItem(lifter, true) };
        return b.Gone[1 - lifter]
            ? step with { Both = b }
            : new(Said(BarTurns.Pass(b, lifter), $"{b.Name(lifter)} is done; {b.Name(1 - lifter)} goes on alone"), step.Effects.RemoveAll(x => x.Effect is Leave));
    }

    /// <summary>Checks, ticks, the question after a search set and the other half of a pair are the same lifter's; so is a menu that is open.</summary>
    private static bool KeepsTheTurn(Session s) => s.Phase is Ticking or Asking or Choosing or Reading
        || (s.LastSet is { } last && s.Place.Current is SetItem && Rests.IsChangeOver(s.Place, last.Set));

    /// <summary>Whose fact undo would take back: the newest of both; null where there is none.</summary>
    public static int? UndoConcerns(TwoOnOneBar b)
    {
        var newest = b.Both.Select(Undoing.Newest).ToList();
        return newest.All(f => f is null) ? null : newest[0] is { } x && (newest[1] is not { } y || x.CompareTo(y) > 0) ? 0 : 1;
    }

    /// <summary>Only where the key would undo: with a number half typed it clears that.</summary>
    private static BarStep UndoOf(TwoOnOneBar b, int owner, SessionEvent e)
    {
        var probe = SessionSteps.Step(b.InTurn, e);
        var undoes = probe.Effects.Any(x => x is WriteFact { Fact: FactStruck }) || probe.Session.Notice?.Text == Undoing.Nothing;
        if (!undoes)
        {
            return Keyed(b, e);
        }

        var step = Merge(b, owner, Undoing.Last(b.Both[owner]));
        return step with { Both = BarTurns.To(step.Both, owner, "taken back") };
    }

    /// <summary>What a step of one session means for both: one count of identities, one bar, and one key that may have bounced.</summary>
    private static BarStep Merge(TwoOnOneBar b, int lifter, Turn turn)
    {
        var other = b.Both[1 - lifter] with
        {
            NextId = turn.Session.NextId,
            OnBar = turn.Session.OnBar,
            LastAccept = turn.Session.LastAccept,
            Now = Instant.Max(turn.Session.Now, b.Both[1 - lifter].Now),
        };
        return new(b.With(lifter, turn.Session).With(1 - lifter, other), [.. turn.Effects.Select(x => (lifter, x))]);
    }
}
