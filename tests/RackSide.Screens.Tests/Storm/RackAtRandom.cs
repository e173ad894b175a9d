using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Rack;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Sessions;
using RackSide.Training.Summary;

namespace RackSide.Screens.Tests.Storm;

/// <summary>
/// A session on the screen whose disk answers late, or now and then not, as it pleases chance; and what must hold of a
/// session whatever was pressed.
/// </summary>
internal sealed class RackAtRandom(Session session, Random chance) : IConversation
{
    private readonly Queue<Fact> unanswered = new();
    private int checkedFacts;

    public Session Session { get; private set; } = session;

    public Action? Wake { get; set; }

    public bool Ended { get; private set; }

    public Page Draw(PageSize size, Instant now) =>
        SessionPages.Draw(Session, Session.Phase is Finishing or Training.Sessions.Ended ? Week() : null, size, now);

    public Bell Press(KeyPress key, Instant now) => Take(KeyTable.EventOf(key, now, Session.TakesText) ?? new OddKey(now));

    public Bell Tick(Instant now)
    {
        while (unanswered.TryDequeue(out var fact))
        {
            Take(chance.Next(20) == 0 ? new WriteFailed(now, fact.Id, "not on disk yet, still trying") : new FactWritten(now, fact.Id));
        }

        return Take(new Ticked(now));
    }

    /// <summary>What does not hold, in words; empty where all does.</summary>
    public IEnumerable<string> Broken()
    {
        var (facts, place) = (Session.Facts, Session.Place);
        for (; checkedFacts < facts.Count; checkedFacts++)
        {
            if (checkedFacts > 0 && (facts[checkedFacts].Id.CompareTo(facts[checkedFacts - 1].Id) <= 0 || facts[checkedFacts].At < facts[checkedFacts - 1].At))
            {
                yield return $"fact {checkedFacts} stands before its time";
            }
        }

        if (Session.Record.Sets.GroupBy(r => (r.Set.Slot, r.Set.Kind, r.Set.Number)).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            yield return $"{twice.Key} stands twice";
        }

        if (Session.Record.Sets.FirstOrDefault(r => r.Set.Done is < 0 or > 999999 || r.Set.Load is { Amount: < 0 }) is { } odd)
        {
            yield return $"{odd.Set} cannot have been done";
        }

        if (Session.Phase is Resting rest && (rest.Clock.Left(Session.Now) < Duration.Zero || place.Current is null))
        {
            yield return "a rest with nothing left or nothing after it";
        }

        if (Session.Phase is Lifting && place.Current is not (SetItem or TotalItem))
        {
            yield return $"a set in hand that is none: {place.Current?.Key}";
        }
    }

    /// <summary>What a start after a kill would stand at, where that is another thing than the screen shows.</summary>
    public string? DifferentAfterAKill() =>
        Session.Resume(Session.Setting, Session.Record, Session.NextId, Session.Now).Place.Current?.Key is var again && again == Session.Place.Current?.Key
            ? null
            : $"{Session.Place.Current?.Key} on the screen is {again} after a kill";

    private Bell Take(SessionEvent e)
    {
        (Session, var effects) = SessionSteps.Step(Session, e);
        foreach (var effect in effects)
        {
            if (effect is WriteFact write)
            {
                unanswered.Enqueue(write.Fact);
            }

            Ended |= effect is Leave;
        }

        return effects.OfType<RingBell>().Any() ? Bell.Once : Bell.None;
    }

    private WeekSummary Week() => WeekSummary.For(
        Plan, TollboothDay.Catalogue, TollboothDay.Kit, TollboothDay.Ottoline, new TrainingHistory([Session.Record]), [], TollboothDay.Wednesday);

    private static Plan Plan { get; } = new("Tollbooth plan", [TollboothDay.Strength, TollboothDay.Skills], new Dictionary<IsoDayOfWeek, string>
    {
        [IsoDayOfWeek.Monday] = "strength-day",
        [IsoDayOfWeek.Wednesday] = "skills-day",
        [IsoDayOfWeek.Friday] = "strength-day",
    });
}
