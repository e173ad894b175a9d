using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>Reads one training day.</summary>
internal sealed class DayReader(Catalogue catalogue, MistakeList mistakes)
{
    /// <summary>The day, or null where it has a mistake.</summary>
    public TrainingDay? Read(YamlField written)
    {
        var good = PlanKeys.Check(written.Name, written.Line, "days", mistakes);
        if (written.Value is not YamlMap map)
        {
            mistakes.Add(written.Line, written.Name, $"{written.Value.Kind} stands where a training day should be", "write name, kind and slots");
            return null;
        }

        var fields = new Fields(map, mistakes);
        var name = fields.RequiredText("name", "write the name people read");
        var kind = fields.Required("kind", PlanWords.Day);
        var slots = Slots(fields);
        fields.TellUnknown();
        return good && name is not null && kind is not null ? new TrainingDay(written.Name, name, kind.Value, slots) : null;
    }

    private IReadOnlyList<Slot> Slots(Fields fields)
    {
        const string right = "list the slots, each beginning with a dash and its key";
        var written = fields.RequiredList("slots", right);
        if (written is { Count: 0 })
        {
            mistakes.Add(fields.LineOf("slots"), "slots", "the list is empty", right);
        }

        var reader = new SlotReader(catalogue, mistakes);
        var slots = (written ?? []).Select(reader.Read).OfType<SlotAt>().ToList();
        NoteTwice(slots);
        new GroupCheck(mistakes).Check(slots);
        return [.. slots.Select(s => s.Slot).OfType<Slot>()];
    }

    private void NoteTwice(List<SlotAt> slots)
    {
        foreach (var twice in slots.Where(s => s.Key is not null).GroupBy(s => s.Key).SelectMany(same => same.Skip(1)))
        {
            mistakes.Add(twice.Line, "key", $"{twice.Key} is used twice in this day", "give each slot a key of its own");
        }
    }
}
