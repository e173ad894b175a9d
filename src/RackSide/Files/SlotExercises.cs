using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>Reads a slot's exercises and checks that each is known, does the motion asked for and is counted as the scheme counts.</summary>
internal sealed class SlotExercises(Catalogue catalogue, MistakeList mistakes)
{
    private const string Field = "exercises";

    /// <summary>The ids in order of preference; faulty ones are told and left out.</summary>
    public IReadOnlyList<string> Read(Fields fields, Motion? motion, Scheme? scheme)
    {
        const string right = "list exercises by id, the one preferred first, such as [back-squat, goblet-squat]";
        var written = fields.RequiredList(Field, right);
        if (written is { Count: 0 })
        {
            mistakes.Add(fields.LineOf(Field), Field, "the list is empty", right);
        }

        var ids = new List<string>();
        foreach (var item in written ?? [])
        {
            if (Known(item, motion) is { } exercise && Does(exercise, motion, item) && Counts(exercise, scheme, item) && Once(ids, exercise, item))
            {
                ids.Add(exercise.Id);
            }
        }

        return ids;
    }

    private Exercise? Known(YamlValue item, Motion? motion)
    {
        if (item is not YamlScalar { Text: var id })
        {
            mistakes.Add(item.Line, Field, $"{item.Kind} stands where an exercise's id should be", "write ids such as back-squat");
            return null;
        }

        var found = catalogue.Find(id);
        if (found is null)
        {
            var meant = Nearest.To(id, catalogue.All.Select(e => e.Id)) ?? Named(id, motion);
            mistakes.Add(item.Line, Field, $"the catalogue has no exercise \"{id}\"",
                meant is null ? "choose an id from docs/plan-files.md" : $"did you mean {meant}?");
        }

        return found;
    }

    /// <summary>The first exercise of the motion that has this for one of its words: <c>bench</c> for bench-press.</summary>
    private string? Named(string word, Motion? motion) =>
        catalogue.All.FirstOrDefault(e => e.Motion == motion && e.Id.Split('-').Contains(word))?.Id;

    private bool Does(Exercise exercise, Motion? motion, YamlValue item)
    {
        if (motion is not { } asked || exercise.Motion == asked)
        {
            return true;
        }

        mistakes.Add(item.Line, Field, $"the motion of {exercise.Id} is {YamlValues.MotionWord(exercise.Motion)}, not {YamlValues.MotionWord(asked)}",
            $"choose another exercise, such as {catalogue.Of(asked).First().Id}");
        return false;
    }

    private bool Counts(Exercise exercise, Scheme? scheme, YamlValue item)
    {
        var (wrong, right) = (scheme, exercise.Held) switch
        {
            (Scheme.Hold, false) => ("is done in reps, but the slot asks for a hold", "write reps in place of hold, or choose a held exercise"),
            (Scheme.Fixed or Scheme.Range, true) => ("is held, but the slot asks for reps", "write hold in place of reps, or choose an exercise done in reps"),
            (Scheme.Accumulate, true) when exercise.OneSided => ("is done one side at a time, but the slot asks for seconds in all", "write sets and hold, which count each side"),
            (Scheme.Total, true) => ("is held, but the slot asks for a total of reps", "choose an exercise done in reps"),
            _ => ("", ""),
        };
        if (wrong.Length > 0)
        {
            mistakes.Add(item.Line, Field, $"{exercise.Id} {wrong}", right);
        }

        return wrong.Length == 0;
    }

    private bool Once(List<string> ids, Exercise exercise, YamlValue item)
    {
        if (!ids.Contains(exercise.Id))
        {
            return true;
        }

        mistakes.Add(item.Line, Field, $"{exercise.Id} is listed twice", "keep it once");
        return false;
    }
}
