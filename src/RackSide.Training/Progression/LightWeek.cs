using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// A light week for one exercise: half the sets, rounded up, the bottom of the range, and ten per cent off the load it
/// stands at. Common practice, no source (beginners after stalls: half the sets, 10 to 20 per cent off). Which week that is,
/// Planning decides over all lifts. Its sessions tell nothing of the strength, so they are passed over afterwards.
/// </summary>
public static class LightWeek
{
    private const int Percent = 10;

    /// <summary>Whether a performance was one of a light week.</summary>
    public static bool Is(Prescription asked) => asked.Why.Code == Reasons.LightWeek;

    /// <summary>What an ordinary decision becomes in a light week; the first time of an exercise stays as light as it is.</summary>
    /// <param name="decided">What the plan's rule asks for.</param>
    /// <param name="slot">The slot.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="past">Its performances, oldest first.</param>
    /// <param name="loads">The loads the kit can give it, or null.</param>
    /// <param name="since">Why it is a light week: <c>2 main lifts stalled</c>, <c>since Mon 9 Nov</c>.</param>
    public static Decision Of(
        Decision decided, Slot slot, Exercise exercise, IReadOnlyList<Performance> past, ReachableLoads? loads, string since)
    {
        if (decided.Targets.Count == 0 || decided.Why.Code == Reasons.FirstTime)
        {
            return decided;
        }

        var (from, load) = Loads(decided, exercise, past, loads);
        return new(load, Reps.Half(slot.Scheme, Bottom(slot, decided)), new Reason(Reasons.LightWeek, $"light week, {since}: {Words(from, load, exercise)}")
        {
            Inputs = [new("percent", Percent, "%"), new("sets", (decided.Targets.Count + 1) / 2)],
            Advice = "half the sets for a week, then the loads come back",
        }.Advise(decided.Why.Code == Reasons.Sore ? Sparing.Caution : null));
    }

    private static IReadOnlyList<int> Bottom(Slot slot, Decision decided) => slot.Scheme is Scheme.Fixed or Scheme.Range
        ? [.. decided.Targets.Select(_ => Reps.Low(slot.Scheme))]
        : decided.Targets;

    private static (Mass? From, Mass? To) Loads(
        Decision decided, Exercise exercise, IReadOnlyList<Performance> past, ReachableLoads? loads)
    {
        var told = past.Where(p => !Is(p.Asked)).Select(p => LoadUsed.Of(p, exercise)).LastOrDefault(l => l is not null);
        if (loads is null || told is not { } used || decided.Load is not { } asked)
        {
            return (decided.Load, decided.Load);
        }

        var moves = new LoadMoves(exercise, loads);
        var from = moves.Fit(used);
        var light = moves.Easier(from, Percent);
        return (from, LoadUsed.IsHarder(light, asked, exercise) ? asked : light);
    }

    private static string Words(Mass? from, Mass? to, Exercise exercise) =>
        from is { } a && to is { } b && a != b ? LoadText.Easier(a, b, Percent, exercise) : "half the sets";
}
