using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>Reads how many sets of what a slot asks for: <c>reps</c> or <c>hold</c> with <c>sets</c>, or <c>total</c>, <c>accumulate</c> or <c>tick</c>.</summary>
internal sealed class SchemeReader(Fields fields, MistakeList mistakes)
{
    /// <summary>The field of work by time, in as many goes as it takes.</summary>
    public const string ByTime = "accumulate";

    private static readonly string[] Ways = ["reps", "hold", "total", ByTime, "tick"];

    /// <summary>The scheme, or null where it has a mistake.</summary>
    public Scheme? Read()
    {
        var ways = Ways.Where(fields.Has).ToList();
        var sets = ways is ["total" or ByTime or "tick"] ? NoSets(ways[0]) : fields.Required("sets", PlanWords.Sets);
        var scheme = ways switch
        {
            [] => Missing(),
            ["reps"] => OfReps(sets),
            ["hold"] => OfHold(sets),
            ["total"] => fields.Required("total", PlanWords.Total) is { } reps ? new Scheme.Total(reps) : null,
            [ByTime] => Ordered(ByTime, Span.Accumulate, " s") is { } time ? new Scheme.Accumulate(time.Low, time.High) : null,
            ["tick"] => fields.Required("tick", PlanWords.Tick) is { } minutes ? new Scheme.Tick(minutes) : null,
            _ => Several(ways),
        };
        KnowAllWays();
        return scheme;
    }

    private Scheme? OfReps(int? sets) => Ordered("reps", Span.Reps, "") switch
    {
        { } reps when sets is { } n => reps.Low == reps.High ? new Scheme.Fixed(n, reps.Low) : new Scheme.Range(n, reps.Low, reps.High),
        _ => null,
    };

    private Scheme? OfHold(int? sets) => Ordered("hold", Span.Hold, " s") is { } seconds && sets is { } n
        ? new Scheme.Hold(n, seconds.Low, seconds.High)
        : null;

    private Span? Ordered(string field, Form<Span> form, string unit)
    {
        var span = fields.Required(field, form);
        if (span is not { } range || range.Low <= range.High)
        {
            return span;
        }

        mistakes.Add(fields.LineOf(field), field, $"{range.Low}-{range.High}{unit} runs backwards", $"write the lower number first: {range.High}-{range.Low}{unit}");
        return null;
    }

    private int? NoSets(string way)
    {
        if (fields.Optional("sets", PlanWords.Sets) is not null)
        {
            mistakes.Add(fields.LineOf("sets"), "sets", $"sets do not go with {way}", "leave sets out");
        }

        return null;
    }

    private Scheme? Missing()
    {
        mistakes.Add(fields.Line, "reps", "missing", "write reps, hold, total, accumulate or tick");
        return null;
    }

    private Scheme? Several(List<string> ways)
    {
        mistakes.Add(ways.Max(fields.LineOf), "", $"{string.Join(" and ", ways)} stand in one slot", "keep one of reps, hold, total, accumulate and tick");
        return null;
    }

    // So that a typing slip such as "rep:" is told with the field that was meant.
    private void KnowAllWays()
    {
        foreach (var way in Ways)
        {
            fields.Know(way);
        }
    }
}
