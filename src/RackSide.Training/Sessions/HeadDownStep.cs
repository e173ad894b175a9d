using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Planning;

namespace RackSide.Training.Sessions;

/// <summary>
/// The question before the first head-down hold: 1 tells that nothing speaks against it and that the way down was read,
/// ENTER takes floor work for today, * takes it from now on. The key pressed without thinking is the careful one.
/// </summary>
internal static class HeadDownStep
{
    public static Turn Step(Session s, Ticking p, SessionEvent e) => e switch
    {
        DigitTyped { Digit: 1 } => ((Turn)s).Keep((id, at) => new HeadDownAnswered(id, at, Floor: false)).Proceed().Say("come down with five seconds in hand"),
        Accepted => OnTheFloor(s).Proceed().Say("floor work for today; asked again next time", Turn.AnswerStays),
        OtherAsked => OnTheFloor(((Turn)s).Keep((id, at) => new HeadDownAnswered(id, at, Floor: true)))
            .Proceed().Say("floor work from now on; ask a clinician before that changes", Turn.AnswerStays),
        MoreAsked => s with { Phase = p with { MovedOn = Math.Max(0, p.MovedOn - 1) } },
        FewerAsked => s with { Phase = p with { MovedOn = Math.Min(Reading.MostLines, p.MovedOn + 1) } },
        _ => SessionSteps.Anywhere(s, e),
    };

    /// <summary>Every head-down exercise of today gives way to the nearest one on the floor; where there is none, its slot is left out.</summary>
    private static Turn OnTheFloor(Turn turn)
    {
        var s = turn.Session;
        return s.Place.Prescriptions
            .Where(p => s.Setting.Catalogue.Find(p.Exercise)?.Inverted == true && !s.Place.LeftOut.Contains(p.Slot))
            .Aggregate(turn, Replace);
    }

    private static Turn Replace(Turn turn, Prescription asked) => Floor(turn.Session, asked) is { } floor
        ? turn.Keep((id, at) => new ExerciseSwapped(id, at, asked.Slot, floor))
        : turn.Keep((id, at) => new SlotLeftOut(id, at, asked.Slot));

    private static Prescription? Floor(Session s, Prescription asked)
    {
        if (s.Setting.Day.Slots.FirstOrDefault(x => x.Key == asked.Slot) is not { } slot)
        {
            return null;
        }

        var (now, careful) = (s.Setting.Catalogue[asked.Exercise], s.Setting.Lifter with { AvoidInverted = true });
        var others = Planner.Others(slot, now, s.Setting.Catalogue, s.Setting.Kit, careful, s.Setting.Before);
        var floor = slot.Ladder is { } ladder ? others.LastOrDefault(e => ladder.RungOf(e.Id) is not null) ?? others.FirstOrDefault() : others.FirstOrDefault();
        return floor is null ? null : Planner.Prescribe(slot, floor, s.Setting.Kit, s.Setting.Before, s.Head.Date);
    }
}
