using System.Reflection;
using NodaTime;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Training.Tests.Sessions;

public sealed class WholeSessionTests
{
    // Standard S2 of docs/screen.md.
    [Fact]
    public void A_whole_session_to_plan_takes_at_most_one_key_a_set_one_more_a_hold_and_four() => ToPlan(
        TollboothDay.WholeMonday(), questions: 0);

    [Fact]
    public void A_first_session_takes_one_key_more_for_each_search_set() => ToPlan(null, questions: 3);

    private static void ToPlan(SessionRecord? before, int questions)
    {
        var rack = before is null ? Rack.Strength() : Rack.Strength(before);

        rack.To(i => i is null).Wait(1).Press("E");

        var agenda = rack.Session.Place.Agenda;
        var (sets, holds) = (agenda.OfType<SetItem>().Count(), agenda.OfType<HoldItem>().Count());
        agenda.OfType<AskItem>().Should().HaveCount(questions);

        rack.Phase.Should().BeOfType<Ended>();
        // One key more begins the session on today's page, before any of these.
        (rack.Keys + 1).Should().BeLessThanOrEqualTo(sets + holds + 4 + questions);
        rack.Session.Record.Sets.Should().HaveCount(sets).And.OnlyContain(s => s.OnTarget);
    }

    [Fact]
    public void The_order_is_ramp_then_sets_slot_by_slot_and_pairs_in_turn()
    {
        var agenda = Rack.Strength(TollboothDay.SquatOnMonday(57.5m, 5, 5, 5, 5, 5)).Session.Place.Agenda;

        agenda.Select(i => i.Key).Should().StartWith(["check/collars-on", "check/floor-clear", "squat/WarmUp1"]);
        agenda.OfType<WorkItem>().Where(w => w.Asked.Group == "arms").Select(w => $"{w.Slot}{w.Number}")
            .Should().Equal("curl1", "extension1", "curl2", "extension2", "curl3", "extension3");
    }

    [Fact]
    public void Every_event_is_answered_in_every_phase()
    {
        var phases = Phases().ToList();
        phases.Select(p => p.Phase.GetType()).Distinct().Should().BeEquivalentTo(Concrete<Phase>());

        foreach (var session in phases)
        {
            foreach (var type in Concrete<SessionEvent>())
            {
                var step = () => SessionSteps.Step(session, Make(type, session.Now + Duration.FromSeconds(10)));
                step.Should().NotThrow($"{type.Name} reaches {session.Phase.GetType().Name}");
            }
        }
    }

    private static IEnumerable<Session> Phases()
    {
        var squat = Rack.Strength().To(i => i is WorkItem).RestOut();
        yield return Rack.Strength().Session;
        yield return Rack.Strength().To(i => i is AskItem).Session;
        yield return Rack.Skills().Check().Session;
        yield return Rack.Skills().To(i => i is TotalItem).Session;
        yield return squat.Session;
        yield return Rack.Strength().To(i => i is WorkItem).RestOut().Lift().Session;
        yield return Rack.Strength().To(i => i is HoldItem).RestOut().Session;
        yield return Rack.Strength().To(i => i is HoldItem).RestOut().Wait(2).Press("E").Wait(12).Session;
        yield return Rack.Strength().To(i => i is null).Session;
        yield return Rack.Strength().To(i => i is null).Wait(1).Press("E").Session;
        foreach (var choice in Enum.GetValues<Choice>())
        {
            yield return squat.Session with { Phase = new Choosing(squat.Now, choice, squat.Phase) };
        }

        foreach (var leaf in Enum.GetValues<Leaf>())
        {
            yield return squat.Session with { Phase = new Reading(squat.Now, leaf, squat.Phase) };
        }
    }

    private static IEnumerable<Type> Concrete<T>() =>
        typeof(T).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(T)) && !t.IsAbstract);

    private static SessionEvent Make(Type type, Instant at)
    {
        var constructor = type.GetConstructors(BindingFlags.Public | BindingFlags.Instance)[0];
        return (SessionEvent)constructor.Invoke([.. constructor.GetParameters().Select(p => Value(p.ParameterType, at))]);
    }

    private static object Value(Type type, Instant at) =>
        type == typeof(Instant) ? at
        : type == typeof(int) ? 7
        : type == typeof(char) ? 'a'
        : type.IsEnum ? Enum.GetValues(type).GetValue(0)!
        : type == typeof(FactId) ? new FactId("rack", 1)
        : "words";
}
