using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>A plan as a coach writes it down; docs/plan-files.md shows one with every field.</summary>
public static class PlanFile
{
    private const string Name = "plan.yaml";

    /// <summary>The text of the plan that comes with the program, for a gym that has none yet.</summary>
    public static string DefaultText => EmbeddedText.Of(Name);

    /// <summary>Reads the plan that comes with the program.</summary>
    /// <exception cref="InvalidDataException">The embedded file is faulty, which is a bug.</exception>
    public static Plan Default(Catalogue catalogue) => Read(DefaultText, Name, catalogue).OrThrow();

    /// <summary>Reads a plan from a file; a file that cannot be read is a mistake too.</summary>
    public static Reading<Plan> ReadFrom(string path, Catalogue catalogue) =>
        TextFile.Read(path, text => Read(text, path, catalogue));

    /// <summary>Reads a plan from text.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="fileName">The name that mistakes are told under.</param>
    /// <param name="catalogue">The exercises a plan may name.</param>
    /// <returns>The plan, or every mistake in it.</returns>
    public static Reading<Plan> Read(string text, string fileName, Catalogue catalogue)
    {
        var mistakes = new MistakeList(fileName);
        var fields = FileFields.Of(text, "name, week and days, as docs/plan-files.md shows", mistakes);
        return mistakes.Close(fields is null ? null : Of(fields, catalogue, mistakes));
    }

    private static Plan? Of(Fields fields, Catalogue catalogue, MistakeList mistakes)
    {
        var name = fields.RequiredText("name", "write the plan's name");
        var written = fields.RequiredEntries("days", "write each training day under a key of its own, such as strength-day");
        var reader = new DayReader(catalogue, mistakes);
        var days = written.Select(reader.Read).OfType<TrainingDay>().ToList();
        var (week, rolling) = Pattern(fields, [.. written.Select(d => d.Name)], mistakes);
        fields.TellUnknown();
        return name is null ? null : new Plan(name, days, week) { Rolling = rolling };
    }

    private static (IReadOnlyDictionary<IsoDayOfWeek, string> Week, IReadOnlyList<string?> Rolling) Pattern(
        Fields fields, IReadOnlyCollection<string> keys, MistakeList mistakes)
    {
        const string rolling = "rolling";
        if (fields.Has(rolling) && fields.Has("week"))
        {
            mistakes.Add(fields.LineOf(rolling), rolling, "week is written too", "keep one of them: a plan goes by weekdays, or it rolls");
        }

        fields.Know(rolling);
        return fields.Has(rolling) && !fields.Has("week")
            ? (new Dictionary<IsoDayOfWeek, string>(), new RollingReader(mistakes).Read(fields, keys))
            : (new WeekReader(mistakes).Read(fields, keys), []);
    }
}
