using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Tollbooth;

/// <summary>A session under a lifter's hands: keys and time in, and everything it asked of the world kept to look at.</summary>
internal sealed class Rack(Session session)
{
    public Session Session { get; private set; } = session;

    public Instant Now { get; private set; } = session.Now;

    public List<Effect> Asked { get; } = [];

    public int Keys { get; private set; }

    /// <summary>Whether the disk answers at once; where not, <see cref="Answer"/> does.</summary>
    public bool DiskAnswers { get; set; } = true;

    public Phase Phase => Session.Phase;

    public AgendaItem? InHand => Session.Place.Current;

    public string? Said => Session.Notice?.Text;

    public IEnumerable<Fact> Written => Asked.OfType<WriteFact>().Select(w => w.Fact);

    public IReadOnlyList<int> Bells => [.. Asked.OfType<RingBell>().Select(b => b.Times)];

    public static Rack Strength(params SessionRecord[] before) => new(TollboothDay.Begin(TollboothDay.Strength, before));

    public static Rack Skills() => new(TollboothDay.Begin(TollboothDay.Skills));

    /// <summary>Time passes second by second, as the screen lets it.</summary>
    public Rack Wait(double seconds)
    {
        for (var left = Duration.FromSeconds(seconds); left > Duration.Zero;)
        {
            var part = Duration.Min(left, Duration.FromSeconds(1));
            (Now, left) = (Now + part, left - part);
            Send(new Ticked(Now));
        }

        return this;
    }

    /// <summary>Presses keys: E is ENTER, digits, + - * / . as on the pad.</summary>
    public Rack Press(string keys)
    {
        foreach (var key in keys)
        {
            Keys++;
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

    /// <summary>A set that takes its time, accepted as shown.</summary>
    public Rack Lift() => Wait(30).Press("E");

    /// <summary>Rests until the clock turns by itself.</summary>
    public Rack RestOut()
    {
        for (var i = 0; Phase is Resting && i < 1000; i++)
        {
            Wait(1);
        }

        return Wait(2);
    }

    /// <summary>Confirms what stands before the first set.</summary>
    public Rack Check() => Wait(5).Press("+");

    public Rack To(Func<AgendaItem?, bool> there)
    {
        for (var i = 0; !there(InHand) && i < 200; i++)
        {
            Forward();
        }

        return this;
    }

    /// <summary>Does the obvious next thing, with time for it.</summary>
    public Rack Forward() => Phase switch
    {
        Ticking when InHand is ConfirmItem => Check(),
        Ticking => Wait(30).Press("E"),
        Lifting => Lift(),
        Asking => Wait(6).Press("E"),
        Resting => RestOut(),
        Holding { Started: null } => Wait(3).Press("E"),
        Holding => Wait(HoldInHand.Target(Session) + 6).Press("E"),
        _ => Wait(1),
    };

    public void Answer(Fact fact) => Send(new FactWritten(Now, fact.Id));

    public void Send(SessionEvent e)
    {
        (Session, var effects) = SessionSteps.Step(Session, e);
        Asked.AddRange(effects);
        foreach (var write in DiskAnswers ? effects.OfType<WriteFact>() : [])
        {
            Send(new FactWritten(Now, write.Fact.Id));
        }
    }
}
