using RackSide.Pages.Rack;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;

namespace RackSide.Visits;

/// <summary>A day's plan in few words.</summary>
internal static class PlanTexts
{
    /// <summary>What to have at hand, and what is left out for want of kit.</summary>
    public static string Needs(TodaysPlan todays, GymKit kit)
    {
        var plates = todays.PlatesNeeded.GroupBy(p => p).Select(g => $"{2 * g.Count()} x {g.Key.Number}").ToList();
        var needs = plates.Count == 0 ? "" : $"Plates at hand: {string.Join(", ", plates)} {kit.Unit.Symbol()}.";
        return string.Join(' ', todays.LeftOut.Select(l => l + ".").Prepend(needs).Where(n => n.Length > 0));
    }

    /// <summary>One slot: <c>squat 5x5 70 kg</c>.</summary>
    public static string Short(Catalogue catalogue, Prescription asked) =>
        $"{catalogue[asked.Exercise].ShortName.ToLowerInvariant()} {PlanLines.Sets(asked)}{(asked.Load is { Amount: > 0 } load ? $" {load}" : "")}";
}
