using CsCheck;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Racks;

namespace RackSide.Training.Tests.Racks;

/// <summary>
/// What makes replicas agree whatever way the events take: the merge is that of a grow-only set, and the state a function of the
/// set (Shapiro and others, "Conflict-free Replicated Data Types", 2011, from memory).
/// </summary>
public class GymFoldTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 11, 2, 7, 0);

    private static readonly string[] Racks = ["bcdfgh", "jkmnpq", "rstvwx"];

    private static readonly string[] People = ["first-a", "first-b"];

    private static readonly Gen<FactId> Id = Gen.Select(Gen.Int[0, 2].Select(i => Racks[i]), Gen.Long[1, 60], (rack, n) => new FactId(rack, n));

    private static readonly Gen<GymEvent> Event = Gen.Select(Id, Gen.Int[0, 6], Gen.Int[0, 1].Select(i => People[i]), Id, Gen.Int[1, 20], Gen.Int[1, 511], Made);

    private static readonly Gen<GymEvent[]> Events = Event.Array[0, 40].Select(many => many.DistinctBy(e => e.Id).ToArray());

    [Fact]
    public void Any_order_and_any_repetition_says_the_same() =>
        (from events in Events
         from again in Gen.Shuffle(events.Concat(events).ToArray())
         select (events, again)).Sample(x => Says(new GymFold(x.again)) == Says(new GymFold(x.events)));

    [Fact]
    public void Merging_is_commutative_associative_and_idempotent() =>
        Gen.Select(Events, Gen.Int[0, 40], Gen.Int[0, 40]).Sample((events, i, j) =>
        {
            var (a, b, c) = (new GymFold(events.Take(i)), new GymFold(events.Skip(i / 2).Take(j)), new GymFold(events.Skip(j / 2)));
            return Says(a.Merge(b)) == Says(b.Merge(a))
                && Says(a.Merge(b).Merge(c)) == Says(a.Merge(b.Merge(c)))
                && Says(a.Merge(a)) == Says(a);
        });

    [Fact]
    public void Nothing_of_an_erased_lifter_comes_back_however_late_it_comes() =>
        Gen.Select(Events, Id, Gen.Int[0, 40]).Sample((events, id, cut) =>
        {
            var others = events.Where(e => e.Id != id).ToArray();
            var fold = new GymFold(others.Take(cut).Append(new LifterErased(id, People[0])));
            fold.Add(others.Skip(cut));
            return fold.Lifters.All(l => l.Key != People[0]) && fold.Sessions(People[0]).Count == 0 && fold.Told(People[0]).Count == 0
                && fold.Weights(People[0]).Count == 0 && fold.Events.All(e => e is LifterErased || e.Lifter != People[0]);
        });

    [Fact]
    public void Of_two_corrections_of_one_set_the_later_counts_and_both_are_kept()
    {
        var set = new SetDone(new FactId("bcdfgh", 2), Start, "squat", "back-squat", SetKind.Working, 1, 5, 5, new Mass(60, MassUnit.Kilogram));
        var fold = new GymFold(
        [
            new SessionFact(People[0], new FactId("bcdfgh", 1), new FormTold(new FactId("rstvwx", 9), Start, set.Id, Slipped: false)),
            new SessionFact(People[0], new FactId("bcdfgh", 1), new FormTold(new FactId("jkmnpq", 8), Start + Duration.FromHours(5), set.Id, Slipped: true)),
            new SessionFact(People[0], new FactId("bcdfgh", 1), set),
            new SessionStarted(Head(new FactId("bcdfgh", 1), People[0])),
        ]);

        var session = fold.Sessions(People[0]).Should().ContainSingle().Subject;
        session.Facts.Should().HaveCount(3);
        session.Sets.Should().ContainSingle().Which.FormSlipped.Should().BeFalse("the word with the higher count is the later one, whatever the wall clocks said");
    }

    [Fact]
    public void A_new_name_here_and_a_new_unit_there_are_both_kept()
    {
        var joined = new Lifter("first-a", "Ottoline Marsh", MassUnit.Kilogram, Start);
        var fold = new GymFold(
        [
            new LifterTold(new FactId("bcdfgh", 1), joined, LifterFields.All),
            new LifterTold(new FactId("bcdfgh", 5), joined with { Name = "Ottoline" }, LifterFields.Name),
            new LifterTold(new FactId("jkmnpq", 6), joined with { Unit = MassUnit.Pound }, LifterFields.Unit),
        ]);

        fold.Lifters.Should().Equal(joined with { Name = "Ottoline", Unit = MassUnit.Pound });
    }

    [Fact]
    public void Two_open_sessions_of_one_lifter_are_both_kept_and_shown()
    {
        var (one, two) = (Head(new FactId("bcdfgh", 1), People[0]), Head(new FactId("jkmnpq", 2), People[0]));
        var fold = new GymFold([new SessionStarted(one), new SessionStarted(two)]);

        var cards = fold.Sessions(People[0]).Select(LookBack.Card).ToList();
        GymFold.OpenTwice(cards).Select(c => c.Id).Should().Equal(one.Id, two.Id);

        fold.Add([new SessionFact(People[0], one.Id, new SessionClosed(new FactId("jkmnpq", 7), Start))]);
        GymFold.OpenTwice(fold.Sessions(People[0]).Select(LookBack.Card)).Should().BeEmpty();
    }

    [Fact]
    public void Fields_told_and_taken_over_are_each_other_s_measure() =>
        Gen.Select(Gen.Int[0, 511], Gen.Int[0, 511]).Sample((a, b) =>
        {
            var (before, after) = (Person(a), Person(b));
            return before.With(after, LifterFieldsOf.Told(before, after)) == after with { Key = before.Key }
                && LifterFieldsOf.Told(before, before) == LifterFields.None;
        });

    [Fact]
    public void Two_who_are_only_called_alike_have_two_keys_and_one_who_came_by_a_record_has_one()
    {
        var here = new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, Start);

        GymKey.Of(here).Should().NotBe(GymKey.Of(here with { Joined = Start + Duration.FromSeconds(1) }));
        GymKey.Of(here with { Name = "Ottoline", Unit = MassUnit.Pound }).Should().Be(GymKey.Of(here));
        GymKey.Of(here with { Key = GymKey.Of(here) }).Should().Be(GymKey.Of(here));
    }

    private static Lifter Person(int bits) => new(
        "first-a", bits % 2 == 0 ? "Ottoline" : "Marsh", bits / 2 % 2 == 0 ? MassUnit.Kilogram : MassUnit.Pound, Start + Duration.FromDays(bits / 4 % 2), bits / 8 % 2 == 0, bits / 16 % 2 == 0)
    {
        Pin = bits / 32 % 2 == 0 ? null : "proof",
        Plan = bits / 64 % 2 == 0 ? null : "juno",
        Look = bits / 128 % 2 == 0 ? null : "grey",
        Body = bits / 256 % 2 == 0 ? BodyProfile.Empty : BodyProfile.Empty with { Hidden = true },
    };

    private static GymEvent Made(FactId id, int kind, string lifter, FactId other, int number, int fields) => kind switch
    {
        0 => new LifterTold(id, Person(number * 25) with { Key = lifter }, (LifterFields)fields),
        1 => new SessionStarted(Head(id, lifter)),
        2 => new SessionFact(lifter, other, new SetDone(id, Start, "squat", "back-squat", SetKind.Working, number, 5, 5, null)),
        3 => new SessionFact(lifter, other, new FactStruck(id, Start, other)),
        4 => new OutsideFact(lifter, new FactStruck(id, Start, other)),
        5 => new OutsideWeight(id, lifter, new LocalDate(2026, 11, number), new Mass(70 + number, MassUnit.Kilogram)),
        _ => number < 18 ? new SessionFact(lifter, other, new SessionClosed(id, Start)) : new LifterErased(id, lifter),
    };

    private static SessionHead Head(FactId id, string lifter) => new()
    {
        Id = id,
        Begun = Start,
        Date = new LocalDate(2026, 11, 2),
        Zone = "Europe/Berlin",
        Lifter = lifter,
        Plan = "plan",
        DayKey = "strength-day",
        DayName = "Strength day",
        Kind = DayKind.Strength,
        Prescriptions = [],
    };

    private static string Says(GymFold fold) => string.Join('\n', People.SelectMany(p => fold.Sessions(p).Select(s => $"{s.Head.Id} {string.Join(' ', s.Facts)}")
        .Concat(fold.Told(p).Select(f => f.ToString())).Concat(fold.Weights(p).OrderBy(w => w.Key).Select(w => w.ToString()))).Concat(fold.Lifters.Select(l => l.ToString())).Concat(fold.Erased.Order()));
}
