using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>
/// What the checks that compare slots need to know. A slot with a mistake of its own still has a place among the others,
/// so that one slip does not bring up a second, untrue sentence about its neighbour.
/// </summary>
/// <param name="Line">The line the slot begins on.</param>
/// <param name="Key">Its key, where it has one.</param>
/// <param name="Group">Its group, where it has one.</param>
/// <param name="Scheme">Its scheme, where that is good.</param>
/// <param name="Slot">The slot, where all of it is good.</param>
internal sealed record SlotAt(int Line, string? Key, string? Group, Scheme? Scheme, Slot? Slot);

/// <summary>Reads one slot of a training day.</summary>
internal sealed class SlotReader(Catalogue catalogue, MistakeList mistakes)
{
    /// <summary>The slot in its place, or null where there is nothing like a slot.</summary>
    public SlotAt? Read(YamlValue written)
    {
        if (written is not YamlMap map)
        {
            mistakes.Add(written.Line, "slots", $"{written.Kind} stands where a slot should be", "begin each slot with a dash and its key");
            return null;
        }

        var fields = new Fields(map, mistakes);
        var slot = Of(fields);
        fields.TellUnknown();
        return slot;
    }

    private SlotAt Of(Fields fields)
    {
        var key = PlanKeys.Read(fields, mistakes);
        var ladderField = new LadderField(fields, catalogue, mistakes);
        var ladder = ladderField.Read();
        var beginWith = ladderField.ReadBeginWith(ladder);
        var motion = fields.Has(LadderField.Name) ? ladder is null ? null : catalogue[ladder.Rungs[^1].Exercise].Motion : fields.Required("motion", YamlValues.Motion);
        var scheme = fields.Has(LadderField.Name) && LadderField.BringsScheme(fields) ? ladderField.Scheme(ladder) : new SchemeReader(fields, mistakes).Read();
        var exercises = fields.Has(LadderField.Name) ? ladderField.Exercises(ladder) : new SlotExercises(catalogue, mistakes).Read(fields, motion, scheme);
        var rest = Rest(fields, scheme);
        var progress = new ProgressReader(fields, mistakes).Read(scheme);
        var ramp = Ramp(fields, scheme);
        var group = fields.OptionalText("group", "write one word for all slots of the group");
        var changeOver = ChangeOver(fields, group);
        var good = key is not null && motion is not null && scheme is not null && rest is not null && progress is not null;
        return new SlotAt(fields.Line, key, group, scheme, !good ? null : new Slot
        {
            Key = key!,
            Motion = motion!.Value,
            Exercises = exercises,
            Ladder = ladder,
            BeginWith = beginWith,
            Scheme = scheme!,
            Rest = rest!.Value,
            Progress = progress!,
            Ramp = ramp,
            Group = group,
            ChangeOver = changeOver,
        });
    }

    private static Duration? Rest(Fields fields, Scheme? scheme) => scheme is Scheme.Tick
        ? fields.Optional("rest", PlanWords.Rest) ?? Duration.Zero
        : fields.Required("rest", PlanWords.Rest);

    private RampKind Ramp(Fields fields, Scheme? scheme)
    {
        var ramp = fields.Optional("ramp", PlanWords.Ramp) ?? RampKind.None;
        if (ramp != RampKind.None && scheme is Scheme.Hold or Scheme.Total or Scheme.Accumulate or Scheme.Tick)
        {
            mistakes.Add(fields.LineOf("ramp"), "ramp", $"warm-up sets do not go with {scheme.Text}", "leave it out");
        }

        return ramp;
    }

    private Duration ChangeOver(Fields fields, string? group)
    {
        var told = fields.Optional("change_over", PlanWords.ChangeOver);
        if (told is not null && group is null)
        {
            mistakes.Add(fields.LineOf("change_over"), "change_over", "this slot stands in no group", "leave it out, or write group");
        }

        return told ?? Duration.FromSeconds(15);
    }
}
