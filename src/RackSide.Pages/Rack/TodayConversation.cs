using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Progression;

namespace RackSide.Pages.Rack;

/// <summary>What today's page shows.</summary>
/// <param name="Title">The day: <c>STRENGTH DAY  Wed 25 Nov</c>.</param>
/// <param name="Why">Why it is this day, in a sentence.</param>
/// <param name="Prescriptions">What is asked for, in order.</param>
/// <param name="Estimate">About how long it takes.</param>
/// <param name="Needs">What to have at hand: <c>plates 2x20, 2x2.5</c>; empty for nothing.</param>
/// <param name="Told">What opening the logbook had to tell; empty for nothing, which is the rule.</param>
public sealed record TodayTexts(
    string Title, string Why, IReadOnlyList<Prescription> Prescriptions, Duration Estimate, string Needs, string Told = "")
{
    /// <summary>What stands in for what the plan prefers; told of the slot looked at on a page too small for all of it.</summary>
    public IReadOnlyList<StandIn> StandIns { get; init; } = [];
}

/// <summary>Today's plan, before it begins: each slot with its sets, its load and why. ENTER begins; / leaves.</summary>
/// <param name="texts">What is shown.</param>
/// <param name="catalogue">Names the exercises.</param>
/// <param name="lookedAt">The slot looked at first, from 0.</param>
public sealed class TodayConversation(TodayTexts texts, Catalogue catalogue, int lookedAt = 0) : StillConversation
{
    // Five hints in 30 columns would push the last ones off the page.
    private const int NarrowColumns = 45;

    private const string GoesOnByItself = "Only a load that is lifted for the first time can be begun from a set you know.";

    private int chosen = lookedAt;
    private bool left;

    /// <summary>Whether ENTER was pressed.</summary>
    public bool Begun { get; private set; }

    /// <summary>Whether the list behind the plan was asked for: less time, the calendar, days away.</summary>
    public bool More { get; private set; }

    /// <summary>Whether the lifter looks back at what was done.</summary>
    public bool LooksBack { get; private set; }

    /// <summary>The slot, from 0, for which the lifter wants to tell a set known from elsewhere; null where that was not asked for.</summary>
    public int? KnowsASet { get; private set; }

    /// <summary>Gives one word on the exchange with the other racks of the gym; null where there are none.</summary>
    public Func<string?> Shared { get; init; } = () => null;

    /// <inheritdoc/>
    public override bool Ended => left;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said)
    {
        var canvas = new Canvas(size);
        var minutes = (int)Math.Round(texts.Estimate.TotalMinutes);
        Frame.Header(canvas, texts.Title, Shared() is { } word ? $"{word}  about {minutes} min" : $"about {minutes} min");
        var row = DrawSlots(canvas, Frame.Top(size));
        DrawNotes(canvas, row);
        KeyHint[] hints = [new("ENTER", "begin"), new("+ -", "look at each"), new("/", "leave"), new("!", "stop signs"), new("*", "less time, kit", "more"), .. CanBeTold ? [new(KeyTable.Pad(Verb.Point), "a set you know", "known set")] : Array.Empty<KeyHint>()];
        Frame.Keys(canvas, [.. hints.Take(size.Columns < NarrowColumns ? 4 : hints.Length)]);
        if (said is not null)
        {
            canvas.Write(1, size.Rows - 3, $" {Frame.Fit(said, size.Columns - 4)} ", Look.Bold);
        }

        return canvas.Done();
    }

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        switch (KeyTable.VerbOf(key))
        {
            case Verb.Accept: Begun = left = true; return null;
            case Verb.Menu or Verb.Leave: left = true; return null;
            case Verb.Other: More = left = true; return null;
            case Verb.LookBack: LooksBack = left = true; return null;
            case Verb.Point when CanBeTold: (KnowsASet, left) = (chosen, true); return null;
            case Verb.Point: return GoesOnByItself;
            case Verb.More when key.Code != KeyCode.Up: return Choose(chosen + 1);
            case Verb.Fewer when key.Code == KeyCode.Down: return Choose(chosen + 1);
            case Verb.More or Verb.Fewer: return Choose(chosen - 1);
            case Verb.Digit when key.Character is >= '1' and <= '9': return Choose(key.Character - '1');
            default: return Notice.DeadKey;
        }
    }

    private bool CanBeTold => texts.Prescriptions.ElementAtOrDefault(chosen) is { Why.Code: Reasons.FirstTime or Reasons.KnownSet } asked
        && KnownSets.CanBeTold(catalogue[asked.Exercise]);

    private string? Choose(int index)
    {
        chosen = Math.Clamp(index, 0, texts.Prescriptions.Count - 1);
        return null;
    }

    /// <summary>Two lines a slot where they fit; else one, and the why-line of the one looked at below.</summary>
    private int DrawSlots(Canvas canvas, int row)
    {
        var size = canvas.Size;
        var (margin, roomy) = (size.Compact ? 0 : 1, Roomy(size));
        for (var i = 0; i < texts.Prescriptions.Count; i++)
        {
            var asked = texts.Prescriptions[i];
            var here = i == chosen;
            canvas.Write(margin, row, $"{(here ? '>' : ' ')} {i + 1} {PlanLines.What(catalogue, asked, size)}", here ? Look.Bold : Look.Plain);
            if (here)
            {
                canvas.Cursor(margin, row);
            }

            row++;
            if (roomy)
            {
                canvas.Write(margin + 4, row++, Frame.Fit(asked.Why.Line, size.Columns - margin - 4));
            }
        }

        return row;
    }

    private void DrawNotes(Canvas canvas, int row)
    {
        var size = canvas.Size;
        var width = size.Columns - 2;
        List<string> notes = [.. Roomy(size) ? [] : Frame.Wrap($"why: {texts.Prescriptions.ElementAtOrDefault(chosen)?.Why.Line}", width)];
        notes.AddRange(texts.Prescriptions.ElementAtOrDefault(chosen) is { } asked && PlanLines.Advice(asked) is { } advice ? Frame.Wrap(advice, width) : []);
        notes.AddRange(!Roomy(size) && StandInHere() is { } standIn ? Frame.Wrap($"standing in: {standIn}", width) : []);
        notes.AddRange(texts.Told.Length > 0 ? Frame.Wrap(texts.Told, width) : []);
        notes.AddRange(Frame.Wrap(texts.Why, width));
        notes.AddRange(texts.Needs.Length > 0 ? Frame.Wrap(texts.Needs, width) : []);
        foreach (var (note, i) in Frame.Within(notes, Frame.Bottom(size) - row, width).Select((n, i) => (n, i)))
        {
            canvas.Write(size.Compact ? 0 : 1, row + i, note);
        }
    }

    private string? StandInHere() => texts.StandIns.FirstOrDefault(s => s.Slot == texts.Prescriptions.ElementAtOrDefault(chosen)?.Slot)?.Text;

    private bool Roomy(PageSize size) => Frame.Bottom(size) - Frame.Top(size) >= (2 * texts.Prescriptions.Count) + 2;
}
