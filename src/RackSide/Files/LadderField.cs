using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>
/// Reads a slot's ladder, which stands in place of motion and exercises and brings each rung's own sets and targets, unless
/// the slot goes by time or by a total.
/// </summary>
internal sealed class LadderField(Fields fields, Catalogue catalogue, MistakeList mistakes)
{
    /// <summary>The field's name.</summary>
    public const string Name = "ladder";

    private static readonly string[] Replaced = ["motion", "exercises"], Brought = ["sets", "reps", "hold", "tick"];

    /// <summary>The ladder; null where none is written, or the one written is not known.</summary>
    public Ladder? Read()
    {
        if (fields.OptionalText(Name, Right()) is not { } key)
        {
            return null;
        }

        var ladder = catalogue.Ladders.FirstOrDefault(l => l.Key == key);
        if (ladder is null)
        {
            var meant = Nearest.To(key, catalogue.Ladders.Select(l => l.Key));
            mistakes.Add(fields.LineOf(Name), Name, $"there is no ladder \"{key}\"", meant is null ? Right() : $"did you mean {meant}?");
        }

        foreach (var field in Replaced.Concat(Brought).Where(fields.Has))
        {
            mistakes.Add(fields.LineOf(field), field, "a ladder brings its own", $"leave {field} out, or leave ladder out");
            fields.Know(field);
        }

        return ladder;
    }

    /// <summary>Whether the rungs bring the sets and targets: the slot goes neither by time nor by a total.</summary>
    public static bool BringsScheme(Fields fields) => !fields.Has(SchemeReader.ByTime) && !fields.Has("total");

    /// <summary>The rung to begin with; null for the easiest.</summary>
    public string? ReadBeginWith(Ladder? ladder)
    {
        const string begin = "begin_with";
        var right = ladder is null ? "leave it out, or write ladder" : "write " + WordForm.OneOf(ladder.Rungs.Select(r => r.Exercise));
        if (fields.OptionalText(begin, right) is not { } id || ladder?.RungOf(id) is not null)
        {
            return fields.Has(begin) ? fields.OptionalText(begin, right) : null;
        }

        mistakes.Add(fields.LineOf(begin), begin, ladder is null ? "this slot has no ladder" : $"{id} is no rung of {ladder.Key}", right);
        return null;
    }

    /// <summary>What the ladder's first rung asks for, which stands for the slot where nothing of a rung is asked; null for no ladder.</summary>
    public Scheme? Scheme(Ladder? ladder) => ladder?.Rungs[0] is not { } first ? null
        : catalogue[first.Exercise].Held ? new Scheme.Hold(first.Sets, first.Low, first.High)
        : new Scheme.Range(first.Sets, first.Low, first.High);

    /// <summary>The exercises of its rungs, easiest first; none for no ladder.</summary>
    public IReadOnlyList<string> Exercises(Ladder? ladder)
    {
        fields.Know("exercises");
        return [.. (ladder?.Rungs ?? []).Select(r => r.Exercise)];
    }

    private string Right() => "write " + WordForm.OneOf(catalogue.Ladders.Select(l => l.Key));
}
