using RackSide.Pages.Rack;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Planning;

namespace RackSide.Visits;

/// <summary>A day's plan in few words.</summary>
internal static class PlanTexts
{
    /// <summary>What to have at hand, and what is left out for want of kit.</summary>
    public static string Needs(TodaysPlan todays)
    {
        var mixed = todays.PlatesNeeded.Any(p => p.Unit != todays.PlatesNeeded[0].Unit);
        var plates = todays.PlatesNeeded.GroupBy(p => p).Select(g => $"{2 * g.Count()} x {(mixed ? g.Key.ToString() : g.Key.Number)}").ToList();
        var needs = plates.Count == 0 ? "" : $"Plates at hand: {string.Join(", ", plates)}{(mixed ? "" : $" {todays.PlatesNeeded[0].Symbol}")}.";
        return string.Join(' ', todays.LeftOut.Select(l => l + ".").Prepend(needs).Where(n => n.Length > 0));
    }

    /// <summary>What stands in for what; empty where the plan has all it prefers.</summary>
    public static string Instead(TodaysPlan todays)
    {
        var told = todays.StandIns.Where(s => s.Instead is not null && todays.Prescriptions.Any(p => p.Slot == s.Slot)).Select(s => s.Text).ToList();
        return told.Count == 0 ? "" : $"Standing in: {string.Join("; ", told)}.";
    }

    /// <summary>One slot: <c>squat 5x5 70 kg</c>.</summary>
    public static string Short(Catalogue catalogue, Prescription asked) =>
        $"{catalogue[asked.Exercise].ShortName.ToLowerInvariant()} {PlanLines.Sets(asked)}{(asked.Load is { Amount: > 0 } load ? $" {load}" : "")}";
}
