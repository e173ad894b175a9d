using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Reads the bars.</summary>
internal sealed class BarReader(MistakeList mistakes)
{
    private const string BarsRight = "list each bar with its name and mass, the one used by default first";
    private const string For = "for", ForRight = "list motions or exercises, such as [elbow_flexion, bench-press]";

    // Read only where a bar names an exercise, which few do.
    private static readonly Lazy<Catalogue> Exercises = new(CatalogueFile.Read);

    /// <summary>The bars of a kit; faulty ones are told and left out.</summary>
    public IReadOnlyList<Bar> Read(Fields fields)
    {
        var written = fields.RequiredList("bars", BarsRight);
        if (written is { Count: 0 })
        {
            mistakes.Add(fields.LineOf("bars"), "bars", "the list is empty", BarsRight);
        }

        return [.. (written ?? []).Select(OfItem).OfType<Bar>()];
    }

    private Bar? OfItem(YamlValue written)
    {
        if (written is not YamlMap map)
        {
            mistakes.Add(written.Line, "bars", $"{written.Kind} stands where a bar should be", BarsRight);
            return null;
        }

        var bar = new Fields(map, mistakes);
        var name = bar.RequiredText("name", "write what the gym calls it");
        var mass = bar.Required("mass", YamlValues.Mass);
        var collar = bar.Optional("collars", YamlValues.Mass);
        var sleeve = bar.Optional("sleeve", Lengths.Form);
        var (motions, exercises) = KeptFor(bar);
        var moves = bar.Optional("moves", Moves) ?? false;
        bar.TellUnknown();
        return name is null || mass is null ? null : Bar.Collared(name, mass.Value, collar) with
        {
            Sleeve = sleeve,
            Motions = motions,
            Exercises = exercises,
            MovesLoaded = moves,
        };
    }

    /// <summary>How a bar comes to another rack height.</summary>
    private static Form<bool> Moves { get; } = WordForm.Of("a way to move a bar", ("stripped", false), ("loaded", true));

    private (IReadOnlyList<Motion> Motions, IReadOnlyList<string> Exercises) KeptFor(Fields bar)
    {
        List<Motion> motions = [];
        List<string> exercises = [];
        foreach (var item in bar.OptionalList(For, ForRight) ?? [])
        {
            var word = item is YamlScalar scalar ? scalar.Text : "";
            if (YamlValues.Motion.Parse(word) is { } motion)
            {
                motions.Add(motion);
            }
            else if (Known(word, item.Line))
            {
                exercises.Add(word);
            }
        }

        return ([.. motions.Distinct()], [.. exercises.Distinct()]);
    }

    private bool Known(string word, int line)
    {
        if (Exercises.Value.Find(word) is { } exercise)
        {
            if (exercise.LoadType == LoadType.Barbell)
            {
                return true;
            }

            mistakes.Add(line, For, $"{word} is not done with a bar and plates", "take it out");
            return false;
        }

        var meant = Nearest.To(word, [.. Enum.GetValues<Motion>().Select(YamlValues.MotionWord), .. Exercises.Value.All.Select(e => e.Id)]);
        mistakes.Add(line, For, $"\"{word}\" is neither a motion nor an exercise", meant is null ? ForRight : $"did you mean {meant}?");
        return false;
    }
}
