using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Schedule;

namespace RackSide.Training.Skills;

/// <summary>Where a ladder stands on a date.</summary>
/// <param name="Exercise">The exercise of the rung to do.</param>
/// <param name="Decision">Its targets, and why.</param>
public sealed record Standing(Exercise Exercise, Decision Decision);

/// <summary>
/// How a lifter moves on a ladder. All holds clean at the target: 5 s more, 10 s more above 30 s (in reps: one more); all
/// clean at the rung's most: the next rung, at half; a hold more than 30 per cent short: the same again. Common practice, no
/// source. More than 30 per cent short twice running steps back: 5 s less (10 s above 30 s; reps at the least already), and
/// below the rung's least to the most of the rung before. That part is ours, so that nobody is stuck on a rung too hard.
/// </summary>
public static class Climbing
{
    private const int ShortPercent = 30, BackAfter = 2;

    private const int StepSeconds = 5, LongStepSeconds = 10, LongAboveSeconds = 30;

    /// <summary>The rung to do, with its targets.</summary>
    /// <param name="slot">A slot with a ladder.</param>
    /// <param name="open">The exercises of its rungs that kit and cautions allow, easiest first.</param>
    /// <param name="history">All the lifter's sessions.</param>
    /// <param name="date">The date it is for.</param>
    /// <returns>Where the ladder stands; null where no rung is open.</returns>
    /// <exception cref="ArgumentException">The slot has no ladder.</exception>
    public static Standing? Next(Slot slot, IReadOnlyList<Exercise> open, TrainingHistory history, LocalDate date)
    {
        var ladder = slot.Ladder ?? throw new ArgumentException($"{slot.Key} has no ladder", nameof(slot));
        if (open.Count == 0)
        {
            return null;
        }

        var last = Last(slot, ladder, history);
        var at = At(slot, ladder, open, last);
        var decision = AsOn(slot, at, history, date);
        return last is null || last.Asked.Exercise != at.Id ? Entered(slot, ladder, at, decision, last)
            : decision.Why.Code is Reasons.LongestHold or Reasons.KitIsSpent or Reasons.LargestTotal ? AtTheMost(slot, ladder, open, at, decision, last)
            : FarShort(last) ? Short(slot, ladder, open, at, history, decision)
            : new Standing(at, decision);
    }

    /// <summary>What a rung asks for when a lifter stays on it, or chooses it: its own history and nothing of the ladder's.</summary>
    internal static Decision AsOn(Slot slot, Exercise exercise, TrainingHistory history, LocalDate date) => Progress.Next(
        RungSlots.Of(slot, exercise), exercise, Past(slot, exercise, history), null, date, Meanwhile.Of(history, exercise.Motion, date));

    /// <summary>The newest performance of a rung in this slot that was not drawn by play; where there is none, in any slot.</summary>
    internal static Performance? Last(Slot slot, Ladder ladder, TrainingHistory history)
    {
        var all = ladder.Rungs.SelectMany(r => history.Of(r.Exercise)).Where(p => p.Asked.Why.Code != SkillReasons.Play).ToList();
        return Newest(all.Where(p => p.Asked.Slot == slot.Key)) ?? Newest(all.Where(p => CountedAlike(slot, p)));
    }

    private static Performance? Newest(IEnumerable<Performance> done) => done.OrderBy(p => (p.Date, p.Begun)).LastOrDefault();

    private static bool CountedAlike(Slot slot, Performance p) => RungSlots.HasOwnNumbers(slot)
        ? p.Asked.Scheme.GetType() == slot.Scheme.GetType()
        : p.Asked.Scheme is not (Scheme.Accumulate or Scheme.Total or Scheme.Tick);

    private static IReadOnlyList<Performance> Past(Slot slot, Exercise exercise, TrainingHistory history)
    {
        var all = history.Of(exercise.Id).Where(p => p.Asked.Why.Code != SkillReasons.Play && CountedAlike(slot, p)).ToList();
        var here = all.Where(p => p.Asked.Slot == slot.Key).ToList();
        return here.Count > 0 ? here : all;
    }

    /// <summary>The rung last done, or the one to begin with, where it is open; else the nearest easier one that is.</summary>
    private static Exercise At(Slot slot, Ladder ladder, IReadOnlyList<Exercise> open, Performance? last)
    {
        var reached = (last?.Asked.Exercise ?? slot.BeginWith) is { } id ? ladder.Number(ladder.RungOf(id)!) : 0;
        return open.LastOrDefault(e => ladder.Number(ladder.RungOf(e.Id)!) <= reached) ?? open[0];
    }

    private static Exercise? After(IReadOnlyList<Exercise> open, Exercise at) => open.SkipWhile(e => e.Id != at.Id).Skip(1).FirstOrDefault();

    private static Exercise? Before(IReadOnlyList<Exercise> open, Exercise at) => open.TakeWhile(e => e.Id != at.Id).LastOrDefault();

    /// <summary>A rung that was not the last one done: the ladder's beginning, or the nearest easier rung.</summary>
    private static Standing Entered(Slot slot, Ladder ladder, Exercise at, Decision decision, Performance? last) => last is null
        ? new(at, decision with { Why = decision.Why.Advise($"{Rung(ladder, at)} towards {ladder.Goal}") })
        : new(at, decision with
        {
            Targets = Reps.Each(RungSlots.Of(slot, at).Scheme, decision.Targets[0]),
            Why = new(SkillReasons.EasierRung, $"the rung of {last.Date.Short()} is not open today: the nearest easier one"),
        });

    /// <summary>The rung's most is reached: the next open rung, or this one again, told why where there are harder ones.</summary>
    private static Standing AtTheMost(
        Slot slot, Ladder ladder, IReadOnlyList<Exercise> open, Exercise at, Decision decision, Performance last) =>
        After(open, at) is { } next ? Up(slot, ladder, at, next, last)
        : ladder.Rungs[^1].Exercise == at.Id ? new(at, decision)
        : new(at, decision with { Why = decision.Why.Advise("stay with it: the next rung wants kit, a hold or a clearance not had yet") });

    private static Standing Up(Slot slot, Ladder ladder, Exercise at, Exercise next, Performance last)
    {
        var (scheme, rung) = (RungSlots.Of(slot, next).Scheme, ladder.RungOf(next.Id)!);
        var from = slot.Scheme is Scheme.Total ? last.Asked.Targets.Max() : Reps.High(RungSlots.Of(slot, at).Scheme);
        var seconds = slot.Scheme is Scheme.Accumulate || (next.Held && slot.Scheme is not Scheme.Total);
        var half = RungSlots.HasOwnNumbers(slot) || at.Held == next.Held ? Half(from, seconds) : Reps.Low(scheme);
        var targets = Reps.Each(scheme, Math.Min(half, rung.BeginAt ?? half));
        var done = slot.Scheme is Scheme.Accumulate || (at.Held && slot.Scheme is not Scheme.Total) ? Inv($"{from} s") : slot.Scheme is Scheme.Total ? Inv($"{from} in all") : Inv($"{last.Asked.Targets.Count}x{from}");
        return new(next, new(null, targets, new Reason(SkillReasons.NextRung, Inv($"all clean at {done} on {last.Date.Short()}: on to the next rung"))
        {
            Inputs = [new("rung", ladder.Number(rung)), new("of", ladder.Rungs.Count)],
            Advice = $"{Rung(ladder, next)} towards {ladder.Goal}",
        }));
    }

    /// <summary>Half, of seconds in whole fives: whole fives are how holds are counted up as well.</summary>
    private static int Half(int from, bool seconds) => seconds ? Math.Max(StepSeconds, from / 2 / StepSeconds * StepSeconds) : Math.Max(1, from / 2);

    private static Standing Short(
        Slot slot, Ladder ladder, IReadOnlyList<Exercise> open, Exercise at, TrainingHistory history, Decision decision)
    {
        var past = Past(slot, at, history);
        var (last, times) = (past[^1], past.Reverse().TakeWhile(FarShort).Count());
        if (decision.Why.Code is not (Reasons.Miss or Reasons.FormSlippedAgain or Reasons.ThirdMiss))
        {
            return new(at, decision);
        }

        return times < BackAfter
            ? new(at, decision with { Why = Told(SkillReasons.FarShort, $"more than {ShortPercent} % short on {last.Date.Short()}: same again, form first", decision.Why) })
            : Back(slot, ladder, open, at, last, decision);
    }

    private static Standing Back(Slot slot, Ladder ladder, IReadOnlyList<Exercise> open, Exercise at, Performance last, Decision decision)
    {
        var (scheme, asked) = (RungSlots.Of(slot, at).Scheme, last.Asked.Targets[0]);
        var less = at.Held ? asked - (asked > LongAboveSeconds ? LongStepSeconds : StepSeconds) : Reps.Low(scheme) - 1;
        var twice = $"more than {ShortPercent} % short twice";
        if (less >= Reps.Low(scheme) || Before(open, at) is not { } easier)
        {
            var targets = Reps.Each(scheme, less);
            return new(at, new(null, targets, Told(SkillReasons.StepBack, Inv($"{twice}, {last.Date.Short()} last: {targets[0]}{(at.Held ? " s" : "")} today"), decision.Why)));
        }

        var back = RungSlots.Of(slot, easier).Scheme;
        return new(easier, new(null, Reps.Each(back, Reps.High(back)), Told(
            SkillReasons.StepBack, $"{twice}, {last.Date.Short()} last: back a rung until it is clean", decision.Why with { Advice = null })));
    }

    private static Reason Told(string code, string line, Reason before) => new(code, line) { Inputs = before.Inputs, Advice = before.Advice };

    /// <summary>Whether a hold or set was more than 30 per cent short of what was asked; what was left out is not.</summary>
    private static bool FarShort(Performance p) => p.Asked.Scheme is not (Scheme.Accumulate or Scheme.Total)
        && p.Sets.Any(s => s.Set.Done * 100 < s.Set.Target * (100 - ShortPercent) && s.Set.Done < Math.Max(1, Floor(p)));

    // A set of reps within its range is no miss, however far below today's aim it is.
    private static int Floor(Performance p) => p.Asked.Scheme is Scheme.Range r ? r.Low : int.MaxValue;

    private static string Rung(Ladder ladder, Exercise exercise) => Inv($"rung {ladder.Number(ladder.RungOf(exercise.Id)!)} of {ladder.Rungs.Count}");

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
