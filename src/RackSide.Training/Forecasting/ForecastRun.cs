using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;

namespace RackSide.Training.Forecasting;

/// <summary>One invented lifter trains one lift on: the rules say what is asked, the guess says what is done.</summary>
internal sealed class ForecastRun(ForecastLift lift, Func<Mass, double> lifted, IReadOnlyList<Performance> past, Meanwhile meanwhile)
{
    /// <summary>The last sessions are enough for every rule: three misses, two sessions over, a load to climb back to.</summary>
    private const int Remembered = 16;

    private readonly List<Performance> done = [.. past.TakeLast(Remembered)];
    private readonly int before = Math.Min(past.Count, Remembered);
    private readonly List<LocalDate> trained = [.. meanwhile.Trained.TakeLast(Remembered)];

    /// <summary>The load asked for first, and the load asked for at the end of each week.</summary>
    public (Mass Now, IReadOnlyList<Mass> Weeks) Loads(
        InventedLifter guess, IReadOnlyList<LocalDate> days, LocalDate today, int weeks, double attendance, Func<double> chance)
    {
        List<(LocalDate Date, Mass Load)> asked = [];
        var body = guess;
        foreach (var date in days)
        {
            var decision = Progress.Next(lift.Slot, lift.Exercise, done, lift.Loads, date, Since());
            asked.Add((date, decision.Load!.Value));
            if (chance() < attendance)
            {
                body = body.After(Period.DaysBetween(done[^1].Date, date));
                Train(decision, date, body, chance);
            }
        }

        var now = asked.Count > 0 ? asked[0].Load : lift.Loads.Nearest(LoadUsed.Of(done[^1], lift.Exercise)!.Value);
        return (now, [.. Enumerable.Range(1, weeks).Select(w => asked.LastOrDefault(a => a.Date < today.PlusDays(7 * w), (Date: today, Load: now)).Load)]);
    }

    /// <summary>What is sore now is taken to be well after one session.</summary>
    private Meanwhile Since() => meanwhile with { Trained = trained, Sore = done.Count > before ? null : meanwhile.Sore };

    private void Train(Decision decision, LocalDate date, InventedLifter body, Func<double> chance)
    {
        var form = body.FormOf(chance);
        var load = decision.Load!.Value;
        done.Add(done[^1] with
        {
            Date = date,
            Asked = done[^1].Asked with { Slot = lift.Slot.Key, Exercise = lift.Exercise.Id, Scheme = lift.Slot.Scheme, Targets = decision.Targets, Load = load, Why = decision.Why },
            Sets = [.. decision.Targets.Select((target, i) => Set(date, load, i, target, body.RepsAt(lifted(load), i, form)))],
            CutShort = false,
            Kind = DayKind.Strength,
        });
        trained.Add(date);
    }

    private SetResult Set(LocalDate date, Mass load, int index, int target, double reps) => new(
        new SetDone(
            new FactId("forecast", index + 1), date.AtMidnight().InUtc().ToInstant(), lift.Slot.Key, lift.Exercise.Id, SetKind.Working,
            index + 1, target, Math.Clamp((int)Math.Floor(reps), 0, target), load),
        FormSlipped: false);
}
