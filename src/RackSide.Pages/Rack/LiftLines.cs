using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>What is said under the digits of a set in hand: what hands must do, what can hurt, why this load, what was done.</summary>
internal static class LiftLines
{
    /// <summary>Columns of the word before a line.</summary>
    private const int Label = 11;

    /// <summary>Columns that later lines stand in where the word and its text stand together.</summary>
    private const int Under = 2;

    private const string InTurn = "in turn";

    /// <summary>The lines, most important first, broken to a width.</summary>
    public static IEnumerable<string> Of(Session s, Lifting p, SlotItem item, int width) =>
        Told(s, p, item).SelectMany(l => Hung(Labelled(l.Word, l.Text), width));

    /// <summary>The same where rows are few: the word and its text together, the later lines of it under the word.</summary>
    public static IEnumerable<string> Tight(Session s, Lifting p, SlotItem item, int width) =>
        Told(s, p, item).Select(l => l.Word is "" or InTurn ? l.Text : $"{l.Word}: {l.Text}").SelectMany(l => l.Length <= width ? [l]
            : Frame.Wrap(l, width - Under).Select((part, i) => i == 0 ? part : new string(' ', Under) + part));

    /// <summary>How long the rest was that turned into this set, and how long ago; empty where none did.</summary>
    public static string Rested(Session s) => s.Phase is Lifting { Rested: { Ends: { } ends } clock }
        ? $"rested {Words.Gone(ends - clock.Began)}, +{Words.Gone(s.Now - ends)}"
        : "";

    private static IEnumerable<(string Word, string Text)> Told(Session s, Lifting p, SlotItem item) => Lines(s, p, item).Where(l => l.Text.Length > 0);

    private static IEnumerable<(string Word, string Text)> Lines(Session s, Lifting p, SlotItem item)
    {
        var exercise = s.Setting.Catalogue[item.Asked.Exercise];
        var work = s.Place.Work(item.Slot).ToList();
        yield return ("changing", p.Field == Field.Load ? "the weight; * goes back to reps" : "");
        yield return ("plates", LoadWords.Plates(s, p, item));
        yield return ("load", SetInHand.Load(s, p) is { } load ? LoadWords.With(exercise, load, s.Setting.Kit) : "");
        yield return ("ramp", item is RampItem ramp and not SearchItem ? Ramp(ramp) : "");
        yield return ("safety", work.Count == 0 ? BeforeLoading.Reminder(exercise, s.Setting.Kit) ?? "" : "");
        yield return ("search", item is SearchItem ? "few reps; stop well short of the limit" : "");
        foreach (var (half, i) in Pair(s, item).Select((half, i) => (half, i)))
        {
            yield return (i == 0 ? InTurn : "", half);
        }

        yield return work.Count > 0 ? ("today", Words.Row(work)) : ("why", item.Asked.Why.Line);
        yield return ("advice", item.Asked.Why.Advice ?? "");
        yield return ("last time", LastTime(s, item));
        yield return ("noted", LastNote(s, item));
        yield return ("clean", Rungs.InHand(s)?.Clean ?? "");
        yield return ("caution", work.Count == 0 ? Rungs.InHand(s)?.Caution ?? "" : "");
        yield return ("cue", exercise.Cues.WayDown);
    }

    /// <summary>A line with its word before it; empty for nothing.</summary>
    internal static string Labelled(string label, string text) => text.Length == 0 ? "" : label.PadRight(Label) + text;

    /// <summary>The steps of the ramp, the one in hand marked, and what they lead to.</summary>
    private static string Ramp(RampItem ramp) =>
        string.Join("  ", ramp.Asked.Ramp.Select((set, i) => $"{(i + 1 == ramp.Number ? ">" : "")}{set.Load.Number}x{set.Reps}"))
        + $"  then {ramp.Asked.Load?.Number}x{ramp.Asked.Targets[0]}";

    /// <summary>What is done in turn, a line each, the one in hand marked, with rounds and load; nothing where the slot stands alone.</summary>
    private static IEnumerable<string> Pair(Session s, SlotItem item) => item.Asked.Group is not { } group ? [] : s.Place.Prescriptions
        .Where(a => a.Group == group)
        .Select(a => $"{(a.Slot == item.Slot ? ">" : " ")} {s.Setting.Catalogue[a.Exercise].ShortName.ToLowerInvariant()} {PlanLines.Sets(a)}{(a.Load is { Amount: > 0 } l ? $" at {l}" : "")}, {s.Place.Work(a.Slot).Count()} done");

    private static string LastTime(Session s, SlotItem item) =>
        s.Setting.Before.Of(item.Asked.Exercise).LastOrDefault() is { } last
            ? $"{(last.Sets[0].Set.Load is { Amount: > 0 } load ? $"{load.Number} x " : "")}{Words.Row(last.Sets)}"
            : "none: the first time";

    private static string LastNote(Session s, SlotItem item) =>
        s.Setting.Before.Of(item.Asked.Exercise).LastOrDefault() is { } last ? string.Join(", ", last.Notes) : "";

    /// <summary>A line in as many as it needs, the later ones under its text.</summary>
    internal static IEnumerable<string> Hung(string line, int width) => line.Length <= width || line.Length < Label
        ? [line]
        : Frame.Wrap(line[Label..], width - Label).Select((part, i) => (i == 0 ? line[..Label] : new string(' ', Label)) + part);
}
