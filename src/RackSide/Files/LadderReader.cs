using RackSide.Training.Exercises;

namespace RackSide.Files;

/// <summary>Reads one ladder.</summary>
internal sealed class LadderReader(Catalogue exercises, MistakeList mistakes)
{
    private readonly HashSet<string> keys = [];

    /// <summary>The ladder, or null where it has a mistake.</summary>
    public Ladder? Read(YamlValue written)
    {
        if (Fields(written, "a ladder", "begin it with a dash and its key") is not { } fields)
        {
            return null;
        }

        var key = fields.RequiredText("key", "write lower-case words with hyphens");
        var name = fields.RequiredText("name", "write the name people read");
        var goal = fields.RequiredText("goal", "write what it leads to, in a few words");
        var rungs = (fields.RequiredList("rungs", "list the rungs, the easiest first") ?? []).Select(Rung).OfType<Rung>().ToList();
        fields.TellUnknown();
        foreach (var twice in rungs.GroupBy(r => r.Exercise).Where(same => same.Count() > 1))
        {
            mistakes.Add(fields.LineOf("rungs"), "rungs", $"{twice.Key} is on two rungs", "keep it on one");
        }

        if (key is not null && !keys.Add(key))
        {
            mistakes.Add(fields.LineOf("key"), "key", $"{key} is used twice", "give each ladder a key of its own");
        }

        return key is null || name is null || goal is null || rungs.Count == 0 ? null : new Ladder(key, name, goal, rungs);
    }

    private Rung? Rung(YamlValue written)
    {
        if (Fields(written, "a rung", "begin it with a dash and its exercise") is not { } fields)
        {
            return null;
        }

        var exercise = Exercise(fields);
        var sets = fields.Required("sets", PlanWords.Sets);
        var span = exercise?.Held == true ? fields.Required("hold", Span.Hold) : fields.Required("reps", Span.Reps);
        var begin = exercise?.Held == true ? (int?)fields.Optional("begin_at", YamlValues.Duration)?.TotalSeconds : fields.Optional("begin_at", YamlValues.Whole(1, 50, "2"));
        var clean = fields.RequiredText("clean", "write what a clean rep or hold looks like");
        var caution = fields.OptionalText("caution", "write what can hurt, or leave it out") ?? "";
        fields.TellUnknown();
        if (span is { } s && s.Low >= s.High)
        {
            mistakes.Add(fields.Line, "", "a rung needs room to climb", "write a range from fewer to more");
        }

        return exercise is null || sets is null || span is null || clean is null ? null : new Rung(exercise.Id, sets.Value, span.Value.Low, span.Value.High)
        {
            BeginAt = begin,
            Clean = clean,
            Caution = caution,
        };
    }

    private Exercise? Exercise(Fields fields)
    {
        if (fields.RequiredText("exercise", "write an id of the catalogue") is not { } id)
        {
            return null;
        }

        var found = exercises.Find(id);
        if (found is null)
        {
            var meant = Nearest.To(id, exercises.All.Select(e => e.Id));
            mistakes.Add(fields.LineOf("exercise"), "exercise", $"the catalogue has no exercise \"{id}\"", meant is null ? "choose an id of the catalogue" : $"did you mean {meant}?");
        }

        return found;
    }

    private Fields? Fields(YamlValue written, string what, string right)
    {
        if (written is YamlMap map)
        {
            return new Fields(map, mistakes);
        }

        mistakes.Add(written.Line, "", $"{written.Kind} stands where {what} should be", right);
        return null;
    }
}
