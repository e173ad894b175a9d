namespace RackSide.Files;

/// <summary>Reads the days of a plan that rolls: training days' keys and the word <c>rest</c>, in order, over and over.</summary>
internal sealed class RollingReader(MistakeList mistakes)
{
    private const string Name = "rolling", Rest = "rest";

    private const string Right = "list training days and rest, such as [strength-day, rest, skills-day, rest, strength-day, rest, rest]";

    // Three weeks are more than any round needs.
    private const int Most = 21;

    /// <summary>The round, null for a rest day; faulty entries are told and left out.</summary>
    public IReadOnlyList<string?> Read(Fields plan, IReadOnlyCollection<string> dayKeys)
    {
        var written = plan.RequiredList(Name, Right) ?? [];
        var before = mistakes.Count;
        var round = written.Select(item => (item.Line, Key: Key(item, dayKeys))).ToList();
        if (mistakes.Count == before)
        {
            Check(plan, round);
        }

        return [.. round.Select(day => day.Key == Rest ? null : day.Key)];
    }

    private string? Key(YamlValue item, IReadOnlyCollection<string> dayKeys)
    {
        if (item is not YamlScalar { Text: var key })
        {
            mistakes.Add(item.Line, Name, $"{item.Kind} stands where a training day's key or rest should be", Right);
            return null;
        }

        if (key != Rest && !dayKeys.Contains(key))
        {
            var meant = Nearest.To(key, dayKeys.Append(Rest));
            mistakes.Add(item.Line, Name, $"days has no \"{key}\"", meant is null ? $"write {WordForm.OneOf(dayKeys.Append(Rest))}" : $"did you mean {meant}?");
        }

        return key;
    }

    private void Check(Fields plan, List<(int Line, string? Key)> round)
    {
        if (!round.Exists(day => day.Key != Rest))
        {
            mistakes.Add(plan.LineOf(Name), Name, "no training day stands in it", Right);
        }
        else if (round.Count > Most)
        {
            mistakes.Add(plan.LineOf(Name), Name, $"{round.Count} days are too long a round", $"write at most {Most}");
        }

        for (var i = 0; i < round.Count; i++)
        {
            if (round[i].Key != Rest && round[(i + 1) % round.Count].Key != Rest)
            {
                var place = i + 1 < round.Count ? $"the {Ordinal(i + 1)} and the {Ordinal(i + 2)} day" : "the last day and the first";
                mistakes.Add(round[i].Line, Name, $"{place} have no rest between", "write rest between training days, and after the last");
            }
        }
    }

    private static string Ordinal(int number) => number switch { 1 => "1st", 2 => "2nd", 3 => "3rd", 21 => "21st", _ => $"{number}th" };
}
