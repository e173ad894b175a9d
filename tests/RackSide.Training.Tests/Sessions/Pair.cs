using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Sessions;

namespace RackSide.Tollbooth;

/// <summary>Two lifters on one bar under their hands, with everything they asked of the world kept to look at.</summary>
internal sealed class Pair
{
    public static readonly Lifter Bram = new("bram", "Bram Okafor-Lind", MassUnit.Pound, TollboothDay.Evening);

    public Pair(TwoOnOneBar both) => (Both, Now) = (both, both.InTurn.Now);

    public TwoOnOneBar Both { get; private set; }

    public Instant Now { get; private set; }

    /// <summary>Whose, and what.</summary>
    public List<(int Lifter, Effect Effect)> Asked { get; } = [];

    public Session Ottoline => Both.Both[0];

    public Session OfBram => Both.Both[1];

    /// <summary>Who is in turn: O or B.</summary>
    public char Who => "OB"[Both.Turn];

    public IReadOnlyList<(int Lifter, SetDone Set)> Sets => [.. Both.Both.SelectMany((s, i) => s.Record.Sets.Select(r => (i, r.Set))).OrderBy(s => s.Set.Id)];

    /// <summary>A strength day for both: what they squatted and rowed on Monday, each set done.</summary>
    public static Pair Strength(decimal ottoline = 60, decimal bram = 90, GymKit? kit = null) => new(Begin(ottoline, bram, kit ?? TollboothDay.Kit));

    /// <summary>The same after a stop: from the facts alone.</summary>
    public Pair Again(double secondsLater)
    {
        var now = Now + Duration.FromSeconds(secondsLater);
        var next = Both.InTurn.NextId;
        var resumed = Both.Both.Select(s => Session.Resume(s.Setting, s.Record, next, now)).ToList();
        return new(TwoOnOneBar.Of(resumed[0], resumed[1])) { Now = now };
    }

    public Pair Wait(double seconds)
    {
        for (var left = Duration.FromSeconds(seconds); left > Duration.Zero;)
        {
            var part = Duration.Min(left, Duration.FromSeconds(1));
            (Now, left) = (Now + part, left - part);
            Send(new Ticked(Now));
        }

        return this;
    }

    public Pair Press(string keys)
    {
        foreach (var key in keys)
        {
            Send(key switch
            {
                'E' => new Accepted(Now),
                '+' => new MoreAsked(Now),
                '-' => new FewerAsked(Now),
                '*' => new OtherAsked(Now),
                '/' => new MenuAsked(Now),
                '.' => new PointTyped(Now),
                _ => new DigitTyped(Now, key - '0'),
            });
        }

        return this;
    }

    public Pair Check() => To(b => b.Both.All(s => s.Place.Current is not ConfirmItem));

    public Pair Lift() => Wait(30).Press("E");

    public Pair RestOut()
    {
        for (var i = 0; Both.InTurn.Phase is Resting && i < 1000; i++)
        {
            Wait(1);
        }

        return Wait(2);
    }

    public Pair To(Func<TwoOnOneBar, bool> there)
    {
        for (var i = 0; !there(Both) && i < 400; i++)
        {
            Forward();
        }

        return this;
    }

    /// <summary>The obvious next thing of whoever is in turn, with time for it.</summary>
    public Pair Forward() => Both.InTurn.Phase switch
    {
        Ticking when Both.InTurn.Place.Current is ConfirmItem => Wait(5).Press("+"),
        Ticking => Wait(30).Press("E"),
        Lifting => Lift(),
        Asking => Wait(6).Press("E"),
        Resting => RestOut(),
        Holding { Started: null } => Wait(3).Press("E"),
        Holding => Wait(HoldInHand.Target(Both.InTurn) + 6).Press("E"),
        Finishing => Wait(2).Press("E"),
        _ => Wait(1),
    };

    public void Send(SessionEvent e)
    {
        (Both, var effects) = BarSteps.Step(Both, e);
        Asked.AddRange(effects);
        foreach (var write in effects.Select(x => x.Effect).OfType<WriteFact>())
        {
            Send(new FactWritten(Now, write.Fact.Id));
        }
    }

    private static TwoOnOneBar Begin(decimal ottoline, decimal bram, GymKit kit)
    {
        var (one, two) = (Head(TollboothDay.Ottoline, 1000), Head(Bram, 1001));
        return TwoOnOneBar.Of(Of(one, two, TollboothDay.Ottoline, ottoline, kit, 1002), Of(two, one, Bram, bram, kit, 1003));
    }

    private static Session Of(SessionHead head, SessionHead other, Lifter lifter, decimal squat, GymKit kit, long next)
    {
        var before = new TrainingHistory([Monday(squat, lifter)]);
        var asked = Planner.Prescriptions(TollboothDay.Strength, TollboothDay.Catalogue, kit, lifter, before, TollboothDay.Wednesday);
        var setting = TollboothDay.Setting(TollboothDay.Strength, before) with { Lifter = lifter, Loads = new KitLoads(kit) };
        var shared = new BarShared(new FactId("rack", next), TollboothDay.Evening, other.Id);
        return Session.Resume(setting, new SessionRecord(head with { Prescriptions = asked }, [shared]), new FactId("rack", 1004), TollboothDay.Evening);
    }

    private static SessionRecord Monday(decimal squat, Lifter lifter)
    {
        var whole = TollboothDay.WholeMonday();
        return new SessionRecord(
            whole.Head with { Lifter = lifter.Key },
            [.. whole.Facts.Select(f => f is SetDone { Slot: "squat" } s ? s with { Load = Mass.Kg(squat) } : f is SetDone { Slot: "row" } r ? r with { Load = Mass.Kg(squat - 20) } : f)]);
    }

    private static SessionHead Head(Lifter lifter, long id) => TollboothDay.Begin(TollboothDay.Strength).Head with
    {
        Id = new FactId("rack", id),
        Lifter = lifter.Key,
    };
}
