using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Progression;

namespace RackSide.Training.Sessions;

/// <summary>What ENTER would tell of a search set, and what would follow.</summary>
public static class AnswerInHand
{
    /// <summary>The good reps left that ENTER would tell: as typed, else the answer that stays at the load.</summary>
    public static int Left(Asking p) => NumberEntry.Parse(p.Typed) is { } typed ? (int)typed : LoadSearch.SafeAnswer;

    /// <summary>The set that the question is about.</summary>
    public static SetDone Set(Session s) => s.Place.Sets.Single(r => r.Set.Id == ((AskItem)s.Place.Current!).Set).Set;

    /// <summary>What follows that answer.</summary>
    public static SearchStep Next(Session s, int left)
    {
        var asked = ((AskItem)s.Place.Current!).Asked;
        return new Searching(s.Record).IfLeft(asked, asked.Search!, left);
    }
}
