using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Reads the things a gym owns besides masses.</summary>
internal sealed class EquipmentReader(MistakeList mistakes)
{
    private const string Name = "equipment";

    /// <summary>Words that follow from what is listed elsewhere in the file, with the field that lists it.</summary>
    private static readonly Dictionary<string, string> ListedIn = new()
    {
        ["barbell"] = "bars",
        ["plates"] = "plates",
        ["dumbbells"] = "dumbbells",
        ["cable stack"] = "stack",
    };

    /// <summary>The machines that exercises ask for.</summary>
    public static IReadOnlyList<string> Machines { get; } =
        ["cable stack", "assist machine", "leg press", "row machine", "chest press machine", "shoulder press machine"];

    /// <summary>Whether a word follows from what is listed elsewhere, so that it need not be written.</summary>
    public static bool IsImplied(string word) => ListedIn.ContainsKey(word);

    /// <summary>The words that follow from what the gym has; a kit always has a bar.</summary>
    public static IEnumerable<string> Implied(
        IReadOnlyList<PlatePairs> plates,
        IReadOnlyList<Mass> dumbbells,
        IReadOnlyList<Handle> handles,
        IReadOnlyList<Mass> stack,
        IReadOnlyList<Machine> machines,
        IReadOnlyList<Band> bands)
    {
        yield return "barbell";
        if (plates.Any(p => p.Pairs > 0))
        {
            yield return "plates";
        }

        if (dumbbells.Count > 0 || handles.Count > 0)
        {
            yield return "dumbbells";
        }

        if (stack.Count > 0)
        {
            yield return "cable stack";
        }

        foreach (var machine in machines)
        {
            yield return machine.Name;
        }

        if (bands.Count > 0)
        {
            yield return "band";
        }
    }

    /// <summary>The words written; unknown ones are told.</summary>
    public IReadOnlySet<string> Read(Fields fields)
    {
        var found = new HashSet<string>();
        foreach (var item in fields.OptionalList(Name, "list things in the catalogue's words, such as rack and bench") ?? [])
        {
            if (Word(item) is { } word && Backed(word, fields, item) && !found.Add(word))
            {
                mistakes.Add(item.Line, Name, $"{word} is listed twice", "keep it once");
            }
        }

        return found;
    }

    private string? Word(YamlValue item)
    {
        var text = item is YamlScalar scalar ? scalar.Text : "";
        if (KitDefaults.EquipmentWords.Contains(text))
        {
            return text;
        }

        var meant = Nearest.To(text, KitDefaults.EquipmentWords);
        mistakes.Add(item.Line, Name, $"no exercise asks for \"{text}\"",
            meant is null ? $"write {WordForm.OneOf(KitDefaults.EquipmentWords)}" : $"did you mean {meant}?");
        return null;
    }

    private bool Backed(string word, Fields fields, YamlValue item)
    {
        if (!ListedIn.TryGetValue(word, out var field) || fields.Has(field))
        {
            return true;
        }

        mistakes.Add(item.Line, Name, $"{word} stands here without masses", $"list them under {field}");
        return false;
    }
}
