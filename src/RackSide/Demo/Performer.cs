using System.Diagnostics;
using System.Globalization;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Demo;

/// <summary>
/// Performs a session by the keys a lifter would press, so that every fact of it is one that the session itself kept:
/// warm-up sets, rests, what is taken back, what is swapped or left out.
/// </summary>
/// <param name="effort">What the lifter manages today.</param>
/// <param name="incident">What goes otherwise than planned today, or null.</param>
/// <param name="weighed">A body weight told at the end, or null.</param>
/// <param name="chance">How long things take.</param>
internal sealed class Performer(Effort effort, Incident? incident, Mass? weighed, Random chance)
{
    private Session session = null!;
    private Incident? ahead = incident;
    private Func<SessionEvent, Session> press = null!;

    /// <summary>Performs it to its end.</summary>
    public Session Perform(Session begun)
    {
        session = begun;
        press = e => SessionSteps.Step(session, e).Session;
        while (session.Phase is not Ended)
        {
            Act(session.Phase);
        }

        return session;
    }

    /// <summary>Does the next thing of a session that is not performed alone.</summary>
    /// <param name="now">The session as it stands.</param>
    /// <param name="step">Takes a key, and gives the session after it.</param>
    public void Act(Session now, Func<SessionEvent, Session> step)
    {
        (session, press) = (now, step);
        Act(session.Phase);
    }

    private void Act(Phase phase)
    {
        switch (phase)
        {
            case Ticking:
                Tick();
                break;
            case Lifting:
                Lift();
                break;
            case Holding:
                Hold();
                break;
            case Asking:
                Press(Seconds(8), at => new Accepted(at));
                break;
            case Resting rest:
                Rest(rest);
                break;
            case Finishing:
                Finish();
                break;
            default:
                throw new UnreachableException();
        }
    }

    private void Tick()
    {
        if (session.Place.Current is TickItem tick)
        {
            Press(Seconds((tick.Minutes * 60) + chance.Next(10, 40)), at => new Accepted(at));
        }
        else
        {
            Press(Seconds(chance.Next(40, 120)), at => new MoreAsked(at));
        }
    }

    private void Lift()
    {
        var item = (SlotItem)session.Place.Current!;
        if (ahead is Incident.Taken or Incident.OutOfTime && ahead.Slot == item.Slot)
        {
            FromMenu();
            return;
        }

        var asked = SetInHand.Asked(session);
        var reps = Reps(item, asked);
        if (ahead is Incident.WrongNumber wrong && IsSet(item, wrong.Slot, wrong.Set))
        {
            ahead = null;
            Write(asked, 2);
            Press(Seconds(4), at => new PointTyped(at));
        }

        Write(asked, reps);
    }

    private int Reps(SlotItem item, int asked)
    {
        var exercise = session.Setting.Catalogue[item.Asked.Exercise];
        var set = session.Place.Work(item.Slot).Count() + 1;
        return item is RampItem ? asked
            : item is TotalItem total ? Math.Max(1, effort.Reps(exercise, null, set, total.Total - session.Place.Counted(total.Slot)))
            : effort.Reps(exercise, SetInHand.AskedLoad(session), set, asked);
    }

    /// <summary>A set takes some seconds to get under the bar and three a rep.</summary>
    private void Write(int asked, int reps)
    {
        Pass(Seconds(chance.Next(12, 25) + (3 * reps)));
        if (reps != asked)
        {
            Type(reps.ToString(CultureInfo.InvariantCulture));
        }

        Press(Seconds(2), at => new Accepted(at));
    }

    private void Hold()
    {
        var item = (SlotItem)session.Place.Current!;
        var (setting, target) = (session.Setting, HoldInHand.Target(session));
        var number = item is HoldItem hold ? hold.Number : Math.Min(5, session.Place.Work(item.Slot).Count() + 1);
        var held = Math.Max(1, effort.Seconds(setting.Catalogue[item.Asked.Exercise], number, target));
        Press(Seconds(chance.Next(5, 15)), at => new Accepted(at));
        Press(setting.LeadIn + Seconds(held) + (held < target ? setting.Reach : Duration.Zero), at => new Accepted(at));
    }

    private void Rest(Resting rest)
    {
        if (ahead is Incident.Slip slip && session.LastSet is { } last && IsSet(Done(last.Set), slip.Slot, slip.Set))
        {
            ahead = null;
            Press(Seconds(6), at => new DigitTyped(at, 1));
            return;
        }

        switch (chance.Next(12))
        {
            case 0 when rest.Clock.Left(session.Now) > Seconds(60):
                Press(rest.Clock.Left(session.Now) - Seconds(chance.Next(5, 20)), at => new Accepted(at));
                break;
            case 1:
                Press(Seconds(10), at => new MoreAsked(at));
                break;
            default:
                Press(rest.Clock.Left(session.Now), at => new Ticked(at));
                break;
        }
    }

    private void FromMenu()
    {
        var line = ahead is Incident.Taken ? 2 : 5;
        ahead = null;
        Press(Seconds(15), at => new MenuAsked(at));
        Press(Seconds(2), at => new DigitTyped(at, line));
        Press(Seconds(5), at => new DigitTyped(at, 1));
    }

    private void Finish()
    {
        Pass(Seconds(chance.Next(60, 240)));
        if (weighed is { } weight)
        {
            Type(weight.Number);
        }

        Press(Seconds(3), at => new Accepted(at));
    }

    private void Type(string number)
    {
        foreach (var c in number)
        {
            Press(Duration.FromMilliseconds(400), at => c == '.' ? new PointTyped(at) : new DigitTyped(at, c - '0'));
        }
    }

    private SlotItem? Done(SetDone set) =>
        session.Place.Agenda.OfType<WorkItem>().FirstOrDefault(i => i.Slot == set.Slot && i.Kind == set.Kind && i.Number == set.Number);

    private static bool IsSet(SlotItem? item, string slot, int number) => item is WorkItem work && work.Slot == slot && work.Number == number;

    private void Pass(Duration time) => Press(time, at => new Ticked(at));

    private void Press(Duration after, Func<Instant, SessionEvent> key) =>
        session = press(key(session.Now + after));

    private static Duration Seconds(int seconds) => Duration.FromSeconds(seconds);
}
