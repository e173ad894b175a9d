using System.Collections.Immutable;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Loading;

namespace RackSide.Training.Sessions;

/// <summary>One training day being performed: its facts, and what it waits for.</summary>
public sealed record Session
{
    /// <summary>What it is held against.</summary>
    public required SessionSetting Setting { get; init; }

    /// <summary>What was settled when it began.</summary>
    public required SessionHead Head { get; init; }

    /// <summary>All facts so far, in order.</summary>
    public required ImmutableList<Fact> Facts { get; init; }

    /// <summary>Facts accepted and not yet on disk.</summary>
    public ImmutableHashSet<FactId> Unwritten { get; init; } = [];

    /// <summary>Why writing fails, in a sentence; null while it works.</summary>
    public string? WriteTrouble { get; init; }

    /// <summary>The identity of the next fact.</summary>
    public required FactId NextId { get; init; }

    /// <summary>What it waits for.</summary>
    public required Phase Phase { get; init; }

    /// <summary>The latest instant heard of. Time never runs backwards here, whatever a clock says.</summary>
    public required Instant Now { get; init; }

    /// <summary>When ENTER was last pressed, to tell a bounce from a press.</summary>
    public Instant? LastAccept { get; init; }

    /// <summary>A sentence for a short time, or null.</summary>
    public Notice? Notice { get; init; }

    /// <summary>The facts with their head, as history sees them.</summary>
    public SessionRecord Record => new(Head, Facts);

    /// <summary>Where it stands: folded anew whenever a fact is kept, because every page and every key asks for it.</summary>
    public required Place Place { get; init; }

    /// <summary>What is on the bar now, as far as the sets done tell; null for a bare bar or one loaded with what the kit lacks.</summary>
    public BarStack? OnBar { get; init; }

    /// <summary>With whom the bar is shared, and what goes on it after the set in hand; null where the bar is the lifter's alone.</summary>
    public BarShare? Share { get; init; }

    /// <summary>Whether letters are typed and mean no verbs.</summary>
    public bool TakesText => Phase is Choosing { What: Choice.NoteText };

    /// <summary>The newest set that stands, or null.</summary>
    public SetResult? LastSet => Place.Sets.LastOrDefault();

    /// <summary>A session that begins.</summary>
    public static Session Begin(SessionSetting setting, SessionHead head) => Opened(setting, new SessionRecord(head, []), After(head.Id), head.Begun);

    /// <summary>
    /// A session as its facts left it. The set in hand is the same, and a rest goes on from the instant its set was
    /// accepted. A present before the last fact is a clock that lies, so the last fact is taken for the present.
    /// </summary>
    /// <param name="setting">What it is held against.</param>
    /// <param name="record">Its head and facts.</param>
    /// <param name="nextId">An identity that no fact of this rack has.</param>
    /// <param name="now">The present.</param>
    public static Session Resume(SessionSetting setting, SessionRecord record, FactId nextId, Instant now)
    {
        var present = record.Facts.Select(f => f.At).Append(record.Head.Begun).Append(now).Max();
        var session = Opened(setting, record, nextId, present);
        return Rests.Pending(setting, record, present) is { } rest ? session with { Phase = rest } : session;
    }

    internal static FactId After(FactId id) => id with { Sequence = id.Sequence + 1 };

    private static Session Opened(SessionSetting setting, SessionRecord record, FactId nextId, Instant now)
    {
        var place = Place.Of(setting.Checks, record);
        return new Session
        {
            Setting = setting,
            Head = record.Head,
            Facts = [.. record.Facts],
            Place = place,
            OnBar = BarInHand.After(setting, record),
            NextId = nextId,
            Now = now,
            Phase = Phases.For(place.Current, now, null),
        };
    }
}

/// <summary>A sentence that goes by itself.</summary>
/// <param name="Text">The sentence.</param>
/// <param name="Until">When it goes.</param>
public sealed record Notice(string Text, Instant Until);
