using NodaTime;
using RackSide.Commands;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Visits;

/// <summary>
/// A session that was written on paper, put into the logbook afterwards. Nobody wrote down when each set was done, so its
/// sets lie as far apart as the plan's rests; that keeps what is learned of the lifter's pace from paper out of the middle.
/// </summary>
internal sealed class PaperSession(Gym gym, Lifter lifter, TodaysPlan plan, LocalDate date)
{
    /// <summary>About how long a set takes. Common practice, no source.</summary>
    private static readonly Duration Set = Duration.FromSeconds(40);

    private Instant at;

    /// <summary>Writes it: each fact is on disk before the next.</summary>
    /// <param name="lines">What was done of each prescription, in order.</param>
    /// <param name="weight">A body weight, or null.</param>
    public void Write(IReadOnlyList<SheetLine> lines, Mass? weight)
    {
        var head = Head();
        at = head.Begun;
        gym.Logbook.Begin(head);
        foreach (var (asked, line) in plan.Prescriptions.Zip(lines))
        {
            Facts(asked, line).ForEach(fact => gym.Logbook.Append(head.Id, fact));
        }

        if (weight is { } weighed)
        {
            gym.Logbook.Append(head.Id, new BodyWeighed(gym.Logbook.NextId(), at, weighed));
        }

        gym.Logbook.Append(head.Id, new SessionClosed(gym.Logbook.NextId(), at));
        gym.Logbook.Settle();
    }

    private SessionHead Head() => new()
    {
        Id = gym.Logbook.NextId(),
        Begun = Instant.Min(gym.Clock.GetCurrentInstant(), gym.Zone.AtLeniently(date.At(LocalTime.Noon)).ToInstant()),
        Date = date,
        Zone = gym.Zone.Id,
        Lifter = lifter.Key,
        Plan = gym.Plan.Name,
        DayKey = plan.Day!.Key,
        DayName = plan.Day.Name,
        Kind = plan.Day.Kind,
        Prescriptions = plan.Prescriptions,
    };

    private List<Fact> Facts(Prescription asked, SheetLine line)
    {
        List<Fact> facts = [];
        foreach (var (set, index) in line.Sets.Select((s, i) => (s, i)))
        {
            at += Set + asked.Rest;
            if (asked.Scheme is Scheme.Tick)
            {
                facts.Add(new ItemTicked(gym.Logbook.NextId(), at, asked.Slot));
                continue;
            }

            var done = new SetDone(
                gym.Logbook.NextId(), at, asked.Slot, asked.Exercise, Kind(asked.Scheme), index + 1, asked.Targets[Math.Min(index, asked.Targets.Count - 1)], set.Done, line.Load ?? asked.Load);
            facts.Add(done);
            if (set.Slipped)
            {
                facts.Add(new FormTold(gym.Logbook.NextId(), at, done.Id, Slipped: true));
            }
        }

        if (asked.Scheme is not (Scheme.Tick or Scheme.Total) && line.Sets.Count < asked.Targets.Count)
        {
            facts.Add(new SlotLeftOut(gym.Logbook.NextId(), at, asked.Slot));
        }

        return facts;
    }

    private static SetKind Kind(Scheme scheme) => scheme switch
    {
        Scheme.Hold => SetKind.Hold,
        Scheme.Total => SetKind.Share,
        _ => SetKind.Working,
    };
}
