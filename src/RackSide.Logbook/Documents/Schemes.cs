using LiteDB;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Documents;

/// <summary>Set schemes, told apart by the word in <c>is</c>.</summary>
internal static class Schemes
{
    /// <summary>The document for a scheme.</summary>
    public static BsonDocument Of(Scheme scheme) => scheme switch
    {
        Scheme.Fixed s => new() { ["is"] = "fixed", ["sets"] = s.Sets, ["reps"] = s.Reps },
        Scheme.Range s => new() { ["is"] = "range", ["sets"] = s.Sets, ["low"] = s.Low, ["high"] = s.High },
        Scheme.Hold s => new() { ["is"] = "hold", ["sets"] = s.Sets, ["low"] = s.LowSeconds, ["high"] = s.HighSeconds },
        Scheme.Total s => new() { ["is"] = "total", ["reps"] = s.Reps },
        Scheme.Accumulate s => new() { ["is"] = "accumulate", ["low"] = s.LowSeconds, ["high"] = s.HighSeconds },
        Scheme.Tick s => new() { ["is"] = "tick", ["minutes"] = s.Minutes },
        _ => throw new ArgumentException($"no document for {scheme.GetType()}", nameof(scheme)),
    };

    /// <summary>The scheme of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static Scheme Read(BsonDocument document) => document.Text("is") switch
    {
        "fixed" => new Scheme.Fixed(document.Int("sets"), document.Int("reps")),
        "range" => new Scheme.Range(document.Int("sets"), document.Int("low"), document.Int("high")),
        "hold" => new Scheme.Hold(document.Int("sets"), document.Int("low"), document.Int("high")),
        "total" => new Scheme.Total(document.Int("reps")),
        "accumulate" => new Scheme.Accumulate(document.Int("low"), document.Int("high")),
        "tick" => new Scheme.Tick(document.Int("minutes")),
        var other => throw new InvalidDataException($"no scheme '{other}'"),
    };
}
