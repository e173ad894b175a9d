using RackSide.Training.History;
using RackSide.Training.Progression;

namespace RackSide.Training.Sessions;

/// <summary>What a missed set means for next time, or for the search it belongs to, in one line, told at once and without blame.</summary>
internal static class Outlook
{
    public static string? AfterSet(Session s, SetDone set)
    {
        if (set.Kind == SetKind.WarmUp)
        {
            return set.Done < set.Target ? InSearch(s, set) : null;
        }

        if (set.Kind is SetKind.Share or SetKind.HeldShare || set.Done >= set.Target
            || s.Setting.Day.Slots.FirstOrDefault(x => x.Key == set.Slot) is not { } slot)
        {
            return null;
        }

        var exercise = s.Setting.Catalogue[set.Exercise];
        var today = new TrainingHistory([s.Record]).Of(set.Exercise, set.Slot);
        var past = s.Setting.Before.Of(set.Exercise, set.Slot).Concat(today).ToList();
        var then = s.Head.Date.PlusDays(3);
        var next = Progress.Next(
            slot, exercise, past, s.Setting.Loads.For(exercise), then, Meanwhile.Of(s.Setting.Before, exercise.Motion, then));
        var unit = set.Kind == SetKind.Hold ? "s" : "reps";
        return $"{set.Done} of {set.Target} {unit}; next time {(next.Load < set.Load ? $"lighter: {next.Load}" : "the same again")}";
    }

    private static string? InSearch(Session s, SetDone set) => s.Place.Current switch
    {
        SearchItem { Asked: var asked, Load: { } load } when asked.Slot == set.Slot => $"too much; {load} next",
        WorkItem { Asked: { Search: not null } asked } when asked.Slot == set.Slot => asked.Why.Line,
        _ => null,
    };
}
