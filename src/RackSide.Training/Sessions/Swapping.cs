using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Progression;

namespace RackSide.Training.Sessions;

/// <summary>Another exercise for the slot in hand, for today only: a fact, never a change of the plan.</summary>
public static class Swapping
{
    /// <summary>Up to nine exercises of the same motion that this gym allows, with what each would ask for today.</summary>
    public static IReadOnlyList<Prescription> Offers(Session s)
    {
        if (s.Place.Current is not SlotItem item || s.Setting.Day.Slots.FirstOrDefault(x => x.Key == item.Slot) is not { } slot)
        {
            return [];
        }

        var now = s.Setting.Catalogue[item.Asked.Exercise];
        var light = s.Head.Prescriptions.Any(LightWeek.Is) ? "as the rest of today" : null;
        return [.. Planner.Others(slot, now, s.Setting.Catalogue, s.Setting.Kit, s.Setting.Lifter, s.Setting.Before).Take(9)
            .Select(e => AsFew(item.Asked, Planner.Prescribe(slot, e, s.Setting.Loads, s.Setting.Before, s.Head.Date, light, s.OnBar)))];
    }

    /// <summary>What the other exercise asks for, in as many sets as there is time for: sets left out for want of time stay left out.</summary>
    private static Prescription AsFew(Prescription asked, Prescription other)
    {
        var gone = Math.Min(asked.SetsLeftOut, other.Targets.Count - 1);
        return gone <= 0 ? other : other with { Targets = [.. other.Targets.SkipLast(gone)], SetsLeftOut = gone };
    }

    internal static Turn Choose(Session s, Choosing p, int line)
    {
        var offers = Offers(s);
        if (line > offers.Count)
        {
            return SessionSteps.NothingHere(s);
        }

        var filled = offers[line - 1];
        var turn = ((Turn)s).Keep((id, at) => new ExerciseSwapped(id, at, filled.Slot, filled));
        return turn
            .Enter(p.Under is Resting rest && GoesOn(rest, turn.Session.Place) ? rest : Phases.For(turn.Session.Place.Current, s.Now, null))
            .Say("for today only; the plan stays as it is");
    }

    /// <summary>A rest goes on where its set still belongs to the slot; before a new ramp or search changing plates is the rest.</summary>
    private static bool GoesOn(Resting rest, Place place) =>
        place.Current is not RampItem && Rests.ItemOf(place, place.Sets.Single(r => r.Set.Id == rest.After).Set) is not null;
}
