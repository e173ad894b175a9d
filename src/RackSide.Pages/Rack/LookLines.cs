using RackSide.Training.History;
using RackSide.Training.Schedule;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>What was done of the exercise in hand, and what is still to come: read only, at any time of a session.</summary>
internal static class LookLines
{
    private const int MostDays = 12;

    public static IEnumerable<string> Back(Session s)
    {
        if (InHand(s) is not { } item)
        {
            yield return "Nothing was done yet.";
            yield break;
        }

        var exercise = item.Asked.Exercise;
        yield return s.Setting.Catalogue[exercise].Name;
        var today = s.Place.Work(item.Slot).Where(r => r.Set.Exercise == exercise).ToList();
        yield return $"- today: {(today.Count == 0 ? "nothing yet" : Row(today))}{Noted(s.Record.NotesOn(today))}";
        var before = s.Setting.Before.Of(exercise).ToList();
        foreach (var day in before.AsEnumerable().Reverse().Take(MostDays))
        {
            yield return $"- {day.Date.Short()}: {Row(day.Sets)}{Noted(day.Notes)}";
        }

        yield return before.Count == 0 ? "No earlier day." : before.Count > MostDays ? "Earlier days: rackside history." : "That is all.";
    }

    public static IEnumerable<string> Ahead(Session s)
    {
        var minutes = (int)Math.Round(Pace.Left(s.Place, s.Setting.Pace).TotalMinutes);
        yield return $"About {minutes} min are left.";
        foreach (var asked in Ordering.Ahead(s))
        {
            var items = s.Place.Agenda.OfType<SlotItem>().Where(i => i.Slot == asked.Slot && !s.Place.IsPast(i)).ToList();
            var ramp = items.OfType<RampItem>().Where(r => r is not SearchItem).Select(r => $"{r.Load?.Number}x{r.Target}").ToList();
            yield return $"- {s.Setting.Catalogue[asked.Exercise].Name}: {(ramp.Count > 0 ? $"warm-up {string.Join(", ", ramp)}, then " : "")}{Words.Still(s, asked, items)}";
        }
    }

    /// <summary>The item that is looked back at: the one in hand, or else the last one done.</summary>
    public static SlotItem? InHand(Session s) => s.Place.Current as SlotItem ?? LastDone(s);

    private static SlotItem? LastDone(Session s) =>
        s.LastSet is { } last ? s.Place.Agenda.OfType<SlotItem>().FirstOrDefault(i => i.Slot == last.Set.Slot) : null;

    /// <summary>The sets of a day: <c>67.5 kg x 5 5 5 4</c>.</summary>
    public static string Row(IReadOnlyList<SetResult> sets) =>
        $"{(sets[0].Set.Load is { Amount: > 0 } load ? $"{load} x " : "")}{Words.Row(sets)}{(sets[0].Set.Kind is SetKind.Hold or SetKind.HeldShare ? " s" : "")}";

    /// <summary>What was noted of them, led by a semicolon; empty for nothing.</summary>
    public static string Noted(IReadOnlyList<string> notes) => notes.Count == 0 ? "" : $"; noted: {string.Join(", ", notes)}";
}
