using System.Collections.Immutable;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Training.Sessions;

/// <summary>What a step gives: the session after it, and what the world is asked to do, in order.</summary>
/// <param name="Session">The session after the step.</param>
/// <param name="Effects">What is asked of the world.</param>
public readonly record struct Turn(Session Session, ImmutableList<Effect> Effects)
{
    /// <summary>How long a sentence stays.</summary>
    public static Duration NoticeStays { get; } = Duration.FromSeconds(4);

    /// <summary>The sentence a set's answer gets.</summary>
    public static Duration AnswerStays { get; } = Duration.FromSeconds(20);

    /// <summary>Nothing asked of the world.</summary>
    public static implicit operator Turn(Session session) => new(session, []);

    internal Turn Enter(Phase phase) => this with { Session = Session with { Phase = phase } };

    internal Turn Say(string text, Duration? stays = null) =>
        this with { Session = Session with { Notice = new Notice(text, Session.Now + (stays ?? NoticeStays)) } };

    internal Turn Ring(int times) => this with { Effects = Effects.Add(new RingBell(times)) };

    internal Turn Ask(Effect effect) => this with { Effects = Effects.Add(effect) };

    /// <summary>Keeps a fact: in the session at once, on disk when the world answers.</summary>
    internal Turn Keep(Func<FactId, Instant, Fact> make)
    {
        var fact = make(Session.NextId with { Sequence = HybridClock.At(Session.NextId.Sequence, Session.Now) }, Session.Now);
        var facts = Session.Facts.Add(fact);
        var kept = Session with
        {
            Facts = facts,
            Place = Place.Of(Session.Setting.Checks, new SessionRecord(Session.Head, facts)),
            OnBar = BarInHand.After(Session.Setting, Session.Place, Session.OnBar, fact, Session.Share?.Ahead),
            Unwritten = Session.Unwritten.Add(fact.Id),
            NextId = Session.After(fact.Id),
        };
        return new Turn(kept, Effects.Add(new WriteFact(fact)));
    }

    /// <summary>On to the item in hand, without a rest.</summary>
    internal Turn Proceed(RestClock? rested = null) => Enter(Phases.For(Session.Place.Current, Session.Now, rested));
}
