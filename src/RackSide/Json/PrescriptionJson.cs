using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;
using RackSide.Training.Progression;

namespace RackSide.Json;

/// <summary>An exercise.</summary>
/// <param name="Id">The name files use.</param>
/// <param name="Name">The name people read.</param>
internal sealed record ExerciseJson(string Id, string Name)
{
    /// <summary>The exercise of an id; one the catalogue no longer has is named by its id.</summary>
    public static ExerciseJson Of(Catalogue catalogue, string id) => new(id, catalogue.Find(id)?.Name ?? id);
}

/// <summary>A why-line with its code.</summary>
/// <param name="Code">Which rule spoke.</param>
/// <param name="Line">The sentence.</param>
/// <param name="Inputs">The numbers it rests on.</param>
/// <param name="Advice">What is offered beside it, or null.</param>
internal sealed record ReasonJson(string Code, string Line, IReadOnlyList<ReasonInputJson> Inputs, string? Advice)
{
    // Read once, and only by a command that prints reasons.
    private static readonly Lazy<RuleSources> Sources = new(SourcesFile.Read);

    /// <summary>Who says so; <c>none</c> where nobody does, null for a code that an older version wrote.</summary>
    public string? Source => Sources.Value.Of(Code)?.Source;

    /// <summary>How sure that is: seen, second-hand, from memory, practice or ours.</summary>
    public string? Status => Sources.Value.Of(Code)?.Status;

    /// <summary>That reason.</summary>
    public static ReasonJson Of(Reason why) =>
        new(why.Code, why.Line, [.. why.Inputs.Select(i => new ReasonInputJson(i.Name, MassJson.Plain(i.Amount), i.Unit.Length > 0 ? i.Unit : null))], why.Advice);
}

/// <summary>A number a reason rests on.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Amount">The number.</param>
/// <param name="Unit"><c>kg</c>, <c>lb</c>, <c>d</c>, <c>s</c> or <c>%</c>; null for a count.</param>
internal sealed record ReasonInputJson(string Name, decimal Amount, string? Unit);

/// <summary>A warm-up set.</summary>
/// <param name="Load">The load.</param>
/// <param name="Reps">The reps.</param>
internal sealed record WarmUpJson(MassJson Load, int Reps);

/// <summary>The search for a first load.</summary>
/// <param name="First">Where it begins.</param>
/// <param name="Reps">The reps of each search set.</param>
/// <param name="MostSets">The most sets it takes.</param>
internal sealed record SearchJson(MassJson First, int Reps, int MostSets);

/// <summary>What a slot asks for.</summary>
internal sealed record PrescriptionJson
{
    /// <summary>The slot's key.</summary>
    public required string Slot { get; init; }

    /// <summary>The exercise.</summary>
    public required ExerciseJson Exercise { get; init; }

    /// <summary>Sets and reps as the plan has them.</summary>
    public required string Scheme { get; init; }

    /// <summary>What the targets count: <c>reps</c> or <c>seconds</c>.</summary>
    public required string Counts { get; init; }

    /// <summary>The targets, one a set.</summary>
    public required IReadOnlyList<int> Targets { get; init; }

    /// <summary>The load, or null.</summary>
    public required MassJson? Load { get; init; }

    /// <summary>The warm-up sets.</summary>
    public required IReadOnlyList<WarmUpJson> WarmUp { get; init; }

    /// <summary>The search that finds the load, or null where it is known.</summary>
    public required SearchJson? Search { get; init; }

    /// <summary>The rest after a working set.</summary>
    public required double RestSeconds { get; init; }

    /// <summary>The group it is done in turn with, or null.</summary>
    public required string? Group { get; init; }

    /// <summary>The time to change over within the group.</summary>
    public required double ChangeOverSeconds { get; init; }

    /// <summary>Why.</summary>
    public required ReasonJson Why { get; init; }

    /// <summary>That prescription.</summary>
    public static PrescriptionJson Of(Catalogue catalogue, Prescription asked) => new()
    {
        Slot = asked.Slot,
        Exercise = ExerciseJson.Of(catalogue, asked.Exercise),
        Scheme = asked.Scheme.Text,
        Counts = asked.Scheme is Training.Plans.Scheme.Hold or Training.Plans.Scheme.Accumulate ? "seconds" : "reps",
        Targets = asked.Targets,
        Load = MassJson.Of(asked.Load),
        WarmUp = [.. asked.Ramp.Select(r => new WarmUpJson(MassJson.Of(r.Load), r.Reps))],
        Search = asked.Search is { } search ? new SearchJson(MassJson.Of(search.First), search.Reps, LoadSearch.MostTries) : null,
        RestSeconds = asked.Rest.TotalSeconds,
        Group = asked.Group,
        ChangeOverSeconds = asked.Group is null ? 0 : asked.ChangeOver.TotalSeconds,
        Why = ReasonJson.Of(asked.Why),
    };
}
