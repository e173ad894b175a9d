using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Progression;

namespace RackSide.Training.Forecasting;

/// <summary>
/// An invented newcomer trains by a plan, day by day: what is due and what it asks come from the planner and the history so
/// far, as for anybody; what is done comes from <see cref="TrialLifter"/>. On one training day in ten nobody comes,
/// and nobody goes away, falls ill or is sore.
/// </summary>
public sealed class TrialYear
{
    /// <summary>The share of days due on which nobody comes. Common practice, no source.</summary>
    public const double Missed = 0.1;

    private readonly Plan plan;
    private readonly Catalogue catalogue;
    private readonly KitLoads gym;
    private readonly Lifter lifter;
    private readonly TrialLifter body;
    private readonly Func<double> chance;
    private readonly List<TrialSession> lived = [];
    private TrainingHistory history = TrainingHistory.Empty;
    private long sequence;

    private TrialYear(Plan plan, Catalogue catalogue, KitLoads gym, Func<double> chance)
    {
        (this.plan, this.catalogue, this.gym, this.chance) = (plan, catalogue, gym, chance);
        lifter = new Lifter("trial", "", gym.Kit.Unit, default);
        body = new TrialLifter(chance);
    }

    /// <summary>Lives through so many weeks of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="gym">What the gym can load; it remembers, so the same one serves many lifters of one thread.</param>
    /// <param name="first">The first day; a Monday, so that weeks are weeks.</param>
    /// <param name="weeks">How many weeks; 1 or more.</param>
    /// <param name="chance">Each call gives a number from 0 up to 1; the same numbers live the same life.</param>
    /// <returns>The sessions done, oldest first.</returns>
    public static IReadOnlyList<TrialSession> Live(Plan plan, Catalogue catalogue, KitLoads gym, LocalDate first, int weeks, Func<double> chance)
    {
        var year = new TrialYear(plan, catalogue, gym, chance);
        for (var date = first; date < first.PlusDays(7 * weeks);)
        {
            date = year.Day(date);
        }

        return year.lived;
    }

    /// <summary>A day, and the next one on which anything can happen: the calendar says when that is, and until then all days are rest.</summary>
    private LocalDate Day(LocalDate date)
    {
        var today = Planner.For(plan, catalogue, gym, lifter, history, date);
        if (today.Day is not null && chance() < Missed)
        {
            return date.PlusDays(1);
        }

        if (today.Day is not null)
        {
            Train(date, today);
        }

        return today.Due.Next;
    }

    private void Train(LocalDate date, TodaysPlan today)
    {
        body.Wake(date);
        List<TrialSlot> slots = [.. today.Prescriptions.Select(asked => Done(asked, today.Day!))];
        lived.Add(new TrialSession(date, today.Day!, today.Estimate, slots));
        history = history.And(Record(date, today, slots));
    }

    private TrialSlot Done(Prescription asked, TrainingDay day)
    {
        var exercise = catalogue[asked.Exercise];
        var load = asked.Search is { } span ? Found(exercise, span) : asked.Load;
        var beyond = day.Slots.First(s => s.Key == asked.Slot).Progress.Kind == ProgressKind.TwoForTwo ? TwoForTwo.RepsOver : 0;
        return new TrialSlot(asked, load, asked.Scheme is Scheme.Total or Scheme.Accumulate or Scheme.Tick
            ? asked.Targets
            : [.. asked.Targets.Select((target, set) => Math.Min(Able(exercise, load, set), target + (set == asked.Targets.Count - 1 ? beyond : 0)))]);
    }

    private int Able(Exercise exercise, Mass? load, int set) => exercise.Held ? body.Seconds(exercise, set) : body.Reps(exercise, load, set);

    /// <summary>The search of a first session, answered as truly as somebody could who knew it.</summary>
    private Mass Found(Exercise exercise, SearchSpan span)
    {
        List<SearchSet> sets = [];
        while (true)
        {
            switch (LoadSearch.Next(span, sets))
            {
                case SearchStep.Try { Load: var load }:
                    var able = body.Reps(exercise, load, 0);
                    sets.Add(new SearchSet(load, span.Reps, Math.Min(able, span.Reps), Math.Max(0, able - span.Reps)));
                    break;
                case SearchStep.Found found:
                    return found.Load;
            }
        }
    }

    private SessionRecord Record(LocalDate date, TodaysPlan today, IReadOnlyList<TrialSlot> slots)
    {
        var at = date.AtMidnight().InUtc().ToInstant();
        var head = today.Head(Next(), at, date, "Etc/UTC", lifter.Key, plan.Name);
        return new SessionRecord(head, [.. slots.SelectMany(s => Facts(s, at)), new SessionClosed(Next(), at)]);
    }

    private IEnumerable<Fact> Facts(TrialSlot slot, Instant at) => slot.Asked.Scheme is Scheme.Tick
        ? [new ItemTicked(Next(), at, slot.Asked.Slot)]
        : slot.Done.Select((done, set) => (Fact)new SetDone(
            Next(), at, slot.Asked.Slot, slot.Asked.Exercise, Kind(slot.Asked.Scheme), set + 1, slot.Asked.Targets[set], done, slot.Load));

    private FactId Next() => new("trial", ++sequence);

    private static SetKind Kind(Scheme scheme) => scheme switch
    {
        Scheme.Hold => SetKind.Hold,
        Scheme.Total => SetKind.Share,
        Scheme.Accumulate => SetKind.HeldShare,
        _ => SetKind.Working,
    };
}
