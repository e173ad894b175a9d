using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Plans;

namespace RackSide.Training.Safety;

/// <summary>
/// The two or three things confirmed once before work begins, the one that can hurt most first. Common practice, no
/// source; that such a list is short, in the trade's words and done before it is confirmed: Degani and Wiener 1993, Human
/// Factors 35(2):345-359, from memory.
/// </summary>
public static class BeforeLoading
{
    private static readonly CheckItem BarsSet = new("safety-bars-set", "safety bars set just under the lowest point of the lift");
    private static readonly CheckItem NoBars = new("no-heavy-alone", "no safety bars here: no heavy squat or bench press alone");
    private static readonly CheckItem Collars = new("collars-on", "collars on both ends of the bar");
    private static readonly CheckItem WarmAndClear = new("warm-and-clear", "body warm, floor clear around you");
    private static readonly CheckItem KitSound = new("kit-sound", "bench, bands, cables and mounts sound");
    private static readonly CheckItem FloorClear = new("floor-clear", "floor clear, room to come down");
    private static readonly CheckItem HoldFirm = new("wall-or-bar-firm", "wall or bar firm");
    private static readonly CheckItem HeadDown = new("fit-for-head-down", "head-down holds: no full stomach, no dizziness");

    /// <summary>The items for a training day: two or three.</summary>
    /// <param name="kind">Strength or skills.</param>
    /// <param name="exercises">What is to be done today.</param>
    /// <param name="kit">What the gym owns.</param>
    public static IReadOnlyList<CheckItem> For(DayKind kind, IEnumerable<Exercise> exercises, GymKit kit)
    {
        var today = exercises.ToList();
        return kind == DayKind.Skills ? Skills(today) : Strength(today, kit);
    }

    /// <summary>The line shown before a loaded squat or press that safety bars belong under; null for every other exercise.</summary>
    public static string? Reminder(Exercise exercise, GymKit kit) => (exercise.NeedsSafetyBars, HasSafetyBars(kit)) switch
    {
        (false, _) => null,
        (true, true) => "Safety bars just under your lowest point?",
        (true, false) => "No safety bars: keep it light, or have a spotter.",
    };

    private static List<CheckItem> Strength(List<Exercise> today, GymKit kit)
    {
        List<CheckItem> items = [];
        if (today.Any(e => e.NeedsSafetyBars))
        {
            items.Add(HasSafetyBars(kit) ? BarsSet : NoBars);
        }

        items.Add(today.Any(e => e.LoadType == LoadType.Barbell) ? Collars : KitSound);
        items.Add(WarmAndClear);
        return items;
    }

    private static CheckItem[] Skills(List<Exercise> today) =>
        today.Any(e => e.Inverted) ? [FloorClear, HoldFirm, HeadDown] : [FloorClear, HoldFirm];

    private static bool HasSafetyBars(GymKit kit) => kit.Equipment.Contains("safety bars");
}
