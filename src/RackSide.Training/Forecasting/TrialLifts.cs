using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;

namespace RackSide.Training.Forecasting;

/// <summary>What became of the loaded lifts of a trial.</summary>
internal static class TrialLifts
{
    /// <summary>A step in one go over this is told. ACSM 2009: 2 to 10 per cent.</summary>
    private const decimal MostPercent = 10;

    private const int Months = 12;

    /// <summary>By slot and exercise, in the order of the plan; what fewer than a lifter in ten ever does is left out.</summary>
    public static IEnumerable<TrialLift> Of(
        Plan plan, Catalogue catalogue, LocalDate first, int weeks, IReadOnlyList<IReadOnlyList<TrialSession>> lives) =>
        from key in plan.Days.SelectMany(d => d.Slots).Select(s => s.Key).Distinct()
        from same in lives
            .Select(life => life.SelectMany(s => s.Slots.Where(t => t.Asked.Slot == key && t.Load is not null).Select(t => new Done(s.Date, t))).ToList())
            .SelectMany(life => life.GroupBy(d => d.Slot.Asked.Exercise))
            .GroupBy(life => life.Key)
        where same.Count() * 10 >= lives.Count
        select One(key, catalogue[same.Key], first, weeks, lives.Count, [.. same.Select(life => life.ToList())]);

    private static TrialLift One(string slot, Exercise exercise, LocalDate first, int weeks, int lifters, List<List<Done>> lives)
    {
        var (stalls, spent) = (Weeks(lives, first, Reasons.ThirdMiss), Weeks(lives, first, Reasons.KitIsSpent));
        return new TrialLift(
            slot,
            exercise,
            Loads(lives.Select(life => life[0]), exercise),
            [.. Enumerable.Range(1, Months).Select(month => Loads(lives.Select(life => Until(life, first.PlusDays(7 * weeks * month / Months))), exercise))],
            stalls.Count / (double)lifters,
            Middle(stalls),
            spent.Count / (double)lifters,
            Middle(spent))
        {
            Jump = Jump(lives, lifters),
        };
    }

    /// <summary>Easiest first: of help the most.</summary>
    private static Band<Mass> Loads(IEnumerable<Done> done, Exercise exercise) => Band<Mass>.Of(
        done.Select(d => d.Slot.Load!.Value), load => exercise.LoadType == LoadType.Assisted ? -load.Kilograms : load.Kilograms);

    private static Done Until(List<Done> life, LocalDate end) => life.LastOrDefault(d => d.Date < end) ?? life[0];

    /// <summary>For each lifter to whom a rule has spoken the week of the first time, counted from 1.</summary>
    private static List<int> Weeks(List<List<Done>> lives, LocalDate first, string code) =>
    [
        .. lives.Select(life => life.Find(d => d.Slot.Asked.Why.Code == code)).OfType<Done>()
            .Select(d => (Period.DaysBetween(first, d.Date) / 7) + 1)
            .Order(),
    ];

    private static int? Middle(List<int> sorted) => sorted.Count > 0 ? sorted[sorted.Count / 2] : null;

    private static (Mass From, Mass To, double Share)? Jump(List<List<Done>> lives, int lifters)
    {
        var jumps = lives.Select(life => life.Zip(life.Skip(1)).Select(StepOf).FirstOrDefault(s => s is not null)).OfType<(Mass From, Mass To)>().ToList();
        return jumps.GroupBy(j => j).OrderByDescending(same => same.Count()).ThenBy(same => same.Key.From).FirstOrDefault() is { } most
            ? (most.Key.From, most.Key.To, jumps.Count / (double)lifters)
            : null;
    }

    /// <summary>A step that a rule took in one go and that is too large; of help the other way round is no step of the load lifted.</summary>
    private static (Mass From, Mass To)? StepOf((Done Before, Done After) pair) =>
        pair.After.Slot.Asked.Why.Inputs.Any(i => i.Name == "stepPercent")
        && (pair.Before.Slot.Load, pair.After.Slot.Load) is ({ Amount: > 0 } from, { } to)
        && (to.Kilograms - from.Kilograms) * 100 > from.Kilograms * MostPercent
            ? (from, to)
            : null;

    private sealed record Done(LocalDate Date, TrialSlot Slot);
}

/// <summary>What became of slots without a load.</summary>
internal static class TrialPractices
{
    /// <summary>In the order of the plan; things to tick are left out.</summary>
    public static IEnumerable<TrialPractice> Of(Plan plan, Catalogue catalogue, IReadOnlyList<IReadOnlyList<TrialSession>> lives) =>
        from key in plan.Days.SelectMany(d => d.Slots).Where(s => s.Scheme is not Scheme.Tick).Select(s => s.Key).Distinct()
        let done = lives
            .Select(life => life.SelectMany(s => s.Slots).Where(t => t.Asked.Slot == key && t.Load is null && t.Asked.Scheme is not Scheme.Tick).ToList())
            .Where(life => life.Count > 0).ToList()
        where done.Count * 2 > lives.Count
        select new TrialPractice(key, Aim(catalogue, done.Select(d => d[0])), Aim(catalogue, done.Select(d => d[^1])));

    private static TrialAim Aim(Catalogue catalogue, IEnumerable<TrialSlot> slots)
    {
        var most = slots.GroupBy(s => s.Asked.Exercise).OrderByDescending(same => same.Count()).First();
        List<int> targets = [.. most.Select(s => s.Asked.Targets[0]).Order()];
        return new(catalogue[most.Key], targets[targets.Count / 2], most.First().Asked.Scheme is Scheme.Hold or Scheme.Accumulate);
    }
}
