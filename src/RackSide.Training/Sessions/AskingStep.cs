using System.Globalization;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;

namespace RackSide.Training.Sessions;

/// <summary>The question after a search set: digits tell how many more good reps were left, ENTER writes it.</summary>
internal static class AskingStep
{
    private const int MostDigits = 2, Most = 99;

    public static Turn Step(Session s, Asking p, SessionEvent e) => e switch
    {
        Accepted => Write(s, p),
        DigitTyped d => Type(s, p, d.Digit),
        MoreAsked => Typed(s, p, Math.Min(Most, AnswerInHand.Left(p) + 1)),
        FewerAsked => Typed(s, p, Math.Max(0, AnswerInHand.Left(p) - 1)),
        OtherAsked => s with { Phase = new Reading(s.Now, Leaf.CueCard, p) },
        BackAsked or MenuAsked or PointTyped or UndoAsked when p.Typed.Length > 0 => s with { Phase = p with { Typed = "" } },
        _ => SessionSteps.Anywhere(s, e),
    };

    private static Turn Type(Session s, Asking p, int digit) => p.Typed.Length < MostDigits
        ? s with { Phase = p with { Typed = p.Typed + digit.ToString(CultureInfo.InvariantCulture) } }
        : ((Turn)s).Say("that number is too long; / clears it");

    private static Session Typed(Session s, Asking p, int left) =>
        s with { Phase = p with { Typed = left.ToString(CultureInfo.InvariantCulture) } };

    private static Turn Write(Session s, Asking p)
    {
        var (item, left) = ((AskItem)s.Place.Current!, AnswerInHand.Left(p));
        var (next, set) = (AnswerInHand.Next(s, left), AnswerInHand.Set(s));
        var turn = ((Turn)s).Keep((id, at) => new RepsLeftTold(id, at, item.Set, left));
        return Follow(turn, item, set).Say(Words(next, set.Load), Turn.AnswerStays);
    }

    /// <summary>A rest after it is reckoned from the set, so that thinking about the answer is rest too.</summary>
    private static Turn Follow(Turn turn, AskItem item, SetDone set)
    {
        var s = turn.Session;
        var clock = RestClock.Start(set.At, Rests.Between(item, s.Place.Current));
        return clock.IsOver(s.Now) ? turn.Proceed() : turn.Enter(new Resting(s.Now, clock, set.Id));
    }

    private static string Words(SearchStep next, Mass? load) => next switch
    {
        SearchStep.Try { Load: var to } => $"{to} next",
        SearchStep.Found { Load: var found } when found == load => $"{found} it is, for today",
        SearchStep.Found { Load: var found } => $"back to {found} for today",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
