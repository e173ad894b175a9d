using NodaTime;
using RackSide.Training.Kit;

namespace RackSide.Files;

/// <summary>The house-rules file of a gym, <c>gym.yaml</c>: written by the set-up screen, read and mended by people.</summary>
public static class GymFile
{
    private static readonly Form<Duration> FewSeconds = YamlValues.Duration with
    {
        Limits = "0 s to 30 s",
        Plausible = d => d <= Duration.FromSeconds(30),
    };

    /// <summary>Reads house rules from a file; a file that cannot be read is a mistake too.</summary>
    public static Reading<HouseRules> ReadFrom(string path) => TextFile.Read(path, text => Read(text, path));

    /// <summary>Reads house rules from text.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="fileName">The name that mistakes are told under.</param>
    /// <returns>The house rules, or every mistake in them.</returns>
    public static Reading<HouseRules> Read(string text, string fileName)
    {
        var mistakes = new MistakeList(fileName);
        var fields = FileFields.Of(text, "unit, bars, plates and training_days", mistakes);
        return mistakes.Close(fields is null ? null : Of(fields, mistakes));
    }

    /// <summary>
    /// The text that reads back as these house rules. Words that follow from what is listed (barbell, plates, dumbbells,
    /// cable stack) are not written, because the reader adds them.
    /// </summary>
    public static string Write(HouseRules rules) => GymText.Of(rules);

    private static HouseRules? Of(Fields fields, MistakeList mistakes)
    {
        var kit = new KitReader(fields, mistakes).Read();
        var days = TrainingDays(fields, mistakes);
        var sound = fields.Optional("sound", YamlValues.Switch) ?? true;
        var zone = Zone(fields, mistakes);
        var starts = fields.Optional("week_starts", YamlValues.WeekStart) ?? IsoDayOfWeek.Monday;
        var backups = fields.Optional("backups", YamlValues.Megabytes) ?? HouseRules.UsualBackupMegabytes;
        var leadIn = fields.Optional("lead_in", FewSeconds);
        var walk = fields.Optional("walk_to_key", FewSeconds);
        fields.TellUnknown();
        return kit is null ? null : new HouseRules(kit, days, sound)
        {
            Zone = zone,
            WeekStarts = starts,
            BackupMegabytes = backups,
            LeadIn = leadIn ?? Duration.FromSeconds(5),
            WalkToKey = walk ?? Duration.FromSeconds(2),
        };
    }

    private static DateTimeZone? Zone(Fields fields, MistakeList mistakes)
    {
        const string name = "time_zone";
        const string right = "write a place of the time zone list, such as Europe/London";
        if (fields.OptionalText(name, right) is not { } id)
        {
            return null;
        }

        var zone = TimeZones.Find(id);
        if (zone is null)
        {
            mistakes.Add(fields.LineOf(name), name, $"\"{id}\" is no time zone", TimeZones.Meant(id) is { } meant ? $"did you mean {meant}?" : right);
        }

        return zone;
    }

    private static List<IsoDayOfWeek> TrainingDays(Fields fields, MistakeList mistakes)
    {
        const string name = "training_days";
        const string right = "list weekdays, such as [monday, wednesday, friday], or write rolling";
        var lines = new SortedDictionary<IsoDayOfWeek, int>();
        var written = fields.RequiredList(name, right);
        if (written is [YamlScalar { Text: "rolling" }])
        {
            return [];
        }

        if (written is { Count: 0 })
        {
            mistakes.Add(fields.LineOf(name), name, "the list is empty", right);
        }

        foreach (var item in ListItems.Of(written, name, YamlValues.Weekday, mistakes))
        {
            if (!lines.TryAdd(item.Value, item.Line))
            {
                mistakes.Add(item.Line, name, $"{item.Text} is listed twice", "keep it once");
            }
        }

        RestBetween.Check(lines, mistakes);
        return [.. lines.Keys];
    }
}

/// <summary>An item of a list, read.</summary>
internal readonly record struct ListItem<T>(T Value, int Line, string Text);

/// <summary>Reads the items of a list that are all of one form.</summary>
internal static class ListItems
{
    /// <summary>The good items; the others are told.</summary>
    public static IEnumerable<ListItem<T>> Of<T>(IReadOnlyList<YamlValue>? written, string field, Form<T> form, MistakeList mistakes)
        where T : struct
    {
        foreach (var item in written ?? [])
        {
            if (item is not YamlScalar scalar)
            {
                mistakes.Add(item.Line, field, $"{item.Kind} stands where {form.Name} should be", form.Right);
            }
            else if (form.Read(scalar, field, mistakes) is { } value)
            {
                yield return new ListItem<T>(value, scalar.Line, scalar.Text);
            }
        }
    }
}
