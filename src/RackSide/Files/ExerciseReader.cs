using RackSide.Training.Exercises;

namespace RackSide.Files;

/// <summary>Reads one exercise of the catalogue.</summary>
internal sealed class ExerciseReader(MistakeList mistakes)
{
    private static readonly Form<(string Exercise, int Seconds)> NeededHold =
        new("an exercise and seconds", "write an id and seconds, such as plank-high 30 s", ParseNeed);

    private static readonly Form<int> BodyShare =
        new("a percentage", "write a whole number and %, such as 65 %", text => text.EndsWith('%') ? YamlValues.ParseWhole(text[..^1].Trim()) : null)
        {
            Limits = "1 % to 100 %",
            Plausible = n => n is >= 1 and <= 100,
        };

    private readonly HashSet<string> ids = [];

    /// <summary>The exercise, or null where it has a mistake.</summary>
    public Exercise? Read(YamlValue written)
    {
        if (written is not YamlMap map)
        {
            mistakes.Add(written.Line, "", $"{written.Kind} stands where an exercise should be", "begin it with a dash and its id");
            return null;
        }

        var fields = new Fields(map, mistakes);
        var exercise = Of(fields);
        fields.TellUnknown();
        return exercise;
    }

    private Exercise? Of(Fields fields)
    {
        var id = fields.RequiredText("id", "write lower-case words with hyphens");
        var name = fields.RequiredText("name", "write the name people read");
        var shortName = fields.RequiredText("short", "write at most 14 characters");
        var motion = fields.Required("motion", YamlValues.Motion);
        var load = fields.Required("load", YamlValues.Load);
        var equipment = Words(fields, "equipment");
        var oneSided = fields.Optional("one_sided", YamlValues.Truth) ?? false;
        var held = fields.Optional("held", YamlValues.Truth) ?? false;
        var inverted = fields.Optional("inverted", YamlValues.Truth) ?? false;
        var needs = fields.Optional("needs", NeededHold);
        var share = fields.Optional("body_share", BodyShare);
        var muscles = Words(fields, "muscles");
        var cues = Cues(fields);
        var easier = fields.OptionalText("easier", "write an id or leave it out");
        var harder = fields.OptionalText("harder", "write an id or leave it out");
        return id is null || name is null || shortName is null || motion is null || load is null || cues is null || Twice(fields, id)
            ? null
            : new Exercise
            {
                Id = id,
                Name = name,
                ShortName = shortName,
                Motion = motion.Value,
                LoadType = load.Value,
                Equipment = equipment,
                OneSided = oneSided,
                Held = held,
                Inverted = inverted,
                Needs = needs is { } hold ? new HoldNeeded(hold.Exercise, hold.Seconds) : null,
                BodyShare = share / 100m,
                Muscles = muscles,
                Cues = cues,
                Easier = easier,
                Harder = harder,
            };
    }

    private bool Twice(Fields fields, string id)
    {
        if (ids.Add(id))
        {
            return false;
        }

        mistakes.Add(fields.LineOf("id"), "id", $"{id} is used twice", "give each exercise an id of its own");
        return true;
    }

    private CueCard? Cues(Fields fields)
    {
        if (fields.RequiredMap("cues", "write set_up, way_down, way_up, fault and stop_if") is not { } map)
        {
            return null;
        }

        var cues = new Fields(map, mistakes);
        string[] card = [.. CueNames.Select(name => cues.RequiredText(name, "write at most 42 characters") ?? "")];
        cues.TellUnknown();
        return new CueCard(card[0], card[1], card[2], card[3], card[4]);
    }

    private static (string Exercise, int Seconds)? ParseNeed(string text) =>
        text.Split(' ', 2) is [var id, var time] && YamlValues.Duration.Parse(time) is { } held ? (id, (int)held.TotalSeconds) : null;

    private static readonly string[] CueNames = ["set_up", "way_down", "way_up", "fault", "stop_if"];

    private static IReadOnlyList<string> Words(Fields fields, string name) =>
        [.. (fields.RequiredList(name, "write a list in square brackets") ?? []).OfType<YamlScalar>().Select(s => s.Text)];
}
