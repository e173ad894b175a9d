using System.Globalization;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Progression;
using RackSide.Training.Strength;

namespace RackSide.Training.Planning;

/// <summary>
/// How far back today's plan looks, so that ten years of sessions need not be read for it. The calendar asks for dates
/// alone, and a card has them. The rules of progress ask for the newest performances of an exercise, however long ago those
/// were; none counts further than the newest dozen, or the newest sixteen weeks at three days a week. Both are ours, and a
/// test holds the plans against those of the whole history.
/// </summary>
public static class LookBack
{
    /// <summary>A card made by another version of <see cref="Card"/> is made anew.</summary>
    public const int CardVersion = 4;

    /// <summary>So many of the newest sessions are read whole.</summary>
    public const int Sessions = 48;

    /// <summary>And so many of the newest that tell of an exercise in a slot, at a scheme.</summary>
    public const int OfEach = 12;

    private const int HalfAYear = 182;

    // A ladder's goal is told with the day it was first reached, and a gate stays open once a hold was long enough.
    private const string Honest = "honest ", Held = "held ";

    /// <summary>What is known of a session without reading it again.</summary>
    public static SessionCard Card(SessionRecord session)
    {
        var trained = session.Trained;
        return new SessionCard(session.Head.Id, session.Head.Lifter, session.Date, session.Head.DayKey, session.Head.Kind)
        {
            Trained = trained,
            Closed = session.Closed,
            Motions = [.. session.Performances.Select(p => p.Asked.Motion).Distinct()],
            Tells = [.. Tells(session, trained).Distinct()],
            Performed = [.. session.Performances.Select(p => (p.Asked.Slot, p.Asked.Exercise)).Distinct()],
            Loads = [.. session.Performances.SelectMany(Loads).Distinct()],
            Weighed = session.Standing.OfType<BodyWeighed>().MaxBy(w => w.Id) is { } told ? (told.Id, told.Weight) : null,
        };
    }

    /// <summary>The sessions that a day's plan needs.</summary>
    /// <param name="cards">Those of all of a lifter's sessions, in the order begun.</param>
    public static IReadOnlySet<FactId> ForPlan(IReadOnlyList<SessionCard> cards) =>
        cards.TakeLast(Sessions)
            .Concat(cards.OrderBy(c => c.Date).TakeLast(Sessions))
            .Concat(NewestOfEach(cards, OfEach))
            .Concat(Milestones(cards))
            .Select(c => c.Id)
            .ToHashSet();

    /// <summary>The sessions that a week's page needs: those of the plan, half a year before it, and where each lift began.</summary>
    /// <param name="cards">Those of all of a lifter's sessions, in the order begun.</param>
    /// <param name="week">A day of the week.</param>
    public static IReadOnlySet<FactId> ForWeek(IReadOnlyList<SessionCard> cards, LocalDate week)
    {
        var from = week.PlusDays(-HalfAYear - 7);
        var firsts = NewestOfEach([.. cards.Reverse()], 1);
        return cards.Where(c => c.Date >= from).Concat(firsts).Select(c => c.Id).Concat(ForPlan(cards)).ToHashSet();
    }

    /// <summary>The sessions in which an exercise was done.</summary>
    /// <param name="cards">Those of all of a lifter's sessions.</param>
    /// <param name="exercise">The exercise's id.</param>
    public static IReadOnlyList<SessionCard> Of(IEnumerable<SessionCard> cards, string exercise) =>
        [.. cards.Where(c => c.Performed.Any(p => p.Exercise == exercise))];

    /// <summary>The exercises that were done, the one done last first.</summary>
    /// <param name="cards">Those of all of a lifter's sessions.</param>
    public static IReadOnlyList<string> Exercises(IEnumerable<SessionCard> cards) =>
        [.. cards.OrderByDescending(c => c.Date).SelectMany(c => c.Performed).Select(p => p.Exercise).Distinct()];

    private static IEnumerable<RepLoad> Loads(Performance done) => done.Sets.Where(RepRecord.Counts)
        .Select(s => new RepLoad(done.Asked.Slot, done.Asked.Exercise, s.Set.Done, s.Set.Load!.Value));

    private static IEnumerable<string> Tells(SessionRecord session, bool trained)
    {
        foreach (var done in session.Performances)
        {
            var loaded = done.Sets.Any(s => s.Set.Load is not null) ? " loaded" : "";
            yield return $"{done.Asked.Slot} {done.Asked.Exercise} {done.Asked.Scheme.Text}{loaded}";
        }

        if (trained && session.Head.Prescriptions.Any(LightWeek.Is))
        {
            yield return "light";
        }

        foreach (var exercise in session.Sets.Where(s => s.Set is { Kind: not SetKind.WarmUp, Done: > 0 } && !s.FormSlipped).GroupBy(s => s.Set.Exercise))
        {
            yield return Honest + exercise.Key;
            if (exercise.Where(s => s.Set.Kind is SetKind.Hold or SetKind.HeldShare).Select(s => s.Set.Done).DefaultIfEmpty().Max() is var longest and > 0)
            {
                yield return FormattableString.Invariant($"{Held}{longest} {exercise.Key}");
            }
        }

        foreach (var answer in session.Standing.OfType<HeadDownAnswered>())
        {
            yield return answer.Floor ? "head-down no" : "head-down yes";
        }

        foreach (var sore in session.Standing.OfType<SoreTold>())
        {
            yield return $"sore {sore.Motion}";
        }
    }

    private static bool IsMilestone(string told) => told.StartsWith(Honest, StringComparison.Ordinal) || told.StartsWith(Held, StringComparison.Ordinal);

    /// <summary>
    /// By date the first honest session of each exercise, and each in which a hold was longer than ever before: the day any
    /// length was first reached is among them, and so is the longest.
    /// </summary>
    private static HashSet<SessionCard> Milestones(IReadOnlyList<SessionCard> cards)
    {
        var longest = new Dictionary<string, int>(StringComparer.Ordinal);
        HashSet<SessionCard> kept = new(ReferenceEqualityComparer.Instance);
        foreach (var card in cards.OrderBy(c => c.Date))
        {
            foreach (var (exercise, seconds) in card.Tells.Where(IsMilestone).Select(Milestone))
            {
                if (seconds > longest.GetValueOrDefault(exercise, -1))
                {
                    longest[exercise] = seconds;
                    kept.Add(card);
                }
            }
        }

        return kept;
    }

    // An honest session counts as a hold of no seconds: the first of an exercise is kept, later ones are not.
    private static (string Exercise, int Seconds) Milestone(string told)
    {
        if (told.StartsWith(Honest, StringComparison.Ordinal))
        {
            return (told[Honest.Length..], 0);
        }

        var space = told.IndexOf(' ', Held.Length);
        return (told[(space + 1)..], int.Parse(told.AsSpan(Held.Length, space - Held.Length), CultureInfo.InvariantCulture));
    }

    private static List<SessionCard> NewestOfEach(IReadOnlyList<SessionCard> cards, int most)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        List<SessionCard> newest = [];
        for (var i = cards.Count - 1; i >= 0; i--)
        {
            var wanted = false;
            foreach (var told in cards[i].Tells.Where(t => !IsMilestone(t)))
            {
                var count = seen.GetValueOrDefault(told);
                seen[told] = count + 1;
                wanted |= count < most;
            }

            if (wanted)
            {
                newest.Add(cards[i]);
            }
        }

        return newest;
    }
}
