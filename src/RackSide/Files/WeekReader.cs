using NodaTime;

namespace RackSide.Files;

/// <summary>Reads which training day falls on which weekday.</summary>
internal sealed class WeekReader(MistakeList mistakes)
{
    private const string Right = "write weekdays with a training day each, such as monday: strength-day";

    /// <summary>The week; faulty entries are told and left out.</summary>
    public IReadOnlyDictionary<IsoDayOfWeek, string> Read(Fields plan, IReadOnlyCollection<string> dayKeys)
    {
        var week = new Dictionary<IsoDayOfWeek, string>();
        var lines = new Dictionary<IsoDayOfWeek, int>();
        foreach (var field in plan.RequiredEntries("week", Right))
        {
            if (YamlValues.Weekday.Read(new YamlScalar(field.Line, field.Name), "week", mistakes) is { } day
                && Key(field, dayKeys) is { } key && Once(lines, day, field))
            {
                week[day] = key;
                lines[day] = field.Line;
            }
        }

        RestBetween.Check(lines, mistakes);
        return week;
    }

    private string? Key(YamlField field, IReadOnlyCollection<string> dayKeys)
    {
        if (field.Value is not YamlScalar { Text: var key })
        {
            mistakes.Add(field.Line, field.Name, $"{field.Value.Kind} stands where a training day's key should be", Right);
            return null;
        }

        if (dayKeys.Contains(key))
        {
            return key;
        }

        var meant = Nearest.To(key, dayKeys);
        mistakes.Add(field.Line, field.Name, key.Length == 0 ? "nothing is written here" : $"days has no \"{key}\"",
            meant is not null ? $"did you mean {meant}?"
            : dayKeys.Count > 0 ? $"write {WordForm.OneOf(dayKeys)}, or take the line out for a day off" : "write the day under days first");
        return null;
    }

    private bool Once(Dictionary<IsoDayOfWeek, int> lines, IsoDayOfWeek day, YamlField field)
    {
        if (!lines.TryGetValue(day, out var first))
        {
            return true;
        }

        mistakes.Add(field.Line, field.Name, $"written twice, first on line {first}", "keep one of them");
        return false;
    }
}
