using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Tests.Schedule;

namespace RackSide.Training.Tests.Progression;

/// <summary>
/// Exercises, slots, and a way to write down what was done as a clipboard has it:
/// <c>Mon 2 60@5: 5 5 5 5~ 57.5x5 cut</c> asks for 60 kg and fives on Monday 2 November 2026; form slipped in the fourth
/// set, the fifth was done at 57.5, and the rest was left out. <c>-@20: 20 20</c> has no load; <c>60@3x5</c> asks for three
/// sets only.
/// </summary>
internal static class Lifting
{
    public static GymKit Garage { get; } = KitDefaults.For(MassUnit.Kilogram);

    public static Exercise Squat { get; } = Of("back-squat", Motion.Squat, LoadType.Barbell);

    public static Exercise Press { get; } = Of("overhead-press", Motion.VerticalPush, LoadType.Barbell);

    public static Exercise Curl { get; } = Of("db-curl", Motion.ElbowFlexion, LoadType.DumbbellPair);

    public static Exercise HelpedChin { get; } = Of("assisted-chin-up", Motion.VerticalPull, LoadType.Assisted);

    public static Exercise ChinUp { get; } = Of("chin-up", Motion.VerticalPull, LoadType.AddedWeight);

    public static Exercise PushUp { get; } = Of("push-up", Motion.HorizontalPush, LoadType.Bodyweight);

    public static Exercise Plank { get; } = Of("plank", Motion.CoreBrace, LoadType.Bodyweight) with { Held = true };

    public static Scheme Fives { get; } = new Scheme.Fixed(5, 5);

    public static Scheme SixToTwelve { get; } = new Scheme.Range(3, 6, 12);

    public static Scheme Holds { get; } = new Scheme.Hold(3, 20, 60);

    public static Exercise Of(string id, Motion motion, LoadType type) => new()
    {
        Id = id,
        Name = id,
        ShortName = id.Length > 14 ? id[..14] : id,
        Motion = motion,
        LoadType = type,
        Cues = new CueCard("stand", "down", "up", "knees fall in: push them out", "pain"),
    };

    public static Slot Slot(Exercise exercise, Scheme scheme, ProgressKind kind, Mass? step = null) => new()
    {
        Key = exercise.Id,
        Motion = exercise.Motion,
        Exercises = [exercise.Id],
        Scheme = scheme,
        Rest = Duration.FromMinutes(2),
        Progress = new ProgressRule(kind, step),
    };

    /// <summary>The rule that belongs to a scheme in the usual plan.</summary>
    public static Slot Slot(Exercise exercise, Scheme scheme) => Slot(exercise, scheme, scheme switch
    {
        Scheme.Fixed => ProgressKind.StepWhenAllMet,
        Scheme.Range => ProgressKind.WorkUpRange,
        Scheme.Hold => ProgressKind.LongerHold,
        _ => ProgressKind.None,
    });

    public static Decision Next(Slot slot, Exercise exercise, string past, string today, GymKit? kit = null) => Progress.Next(
        slot, exercise, Past(slot, exercise, past), Loads.For(exercise, kit ?? Garage), Weeks.Date(today));

    public static IReadOnlyList<Performance> Past(Slot slot, Exercise exercise, string past) =>
        past == "-" ? [] : [.. past.Split(';', StringSplitOptions.TrimEntries).Select(p => One(slot, exercise, p))];

    /// <summary>What the decision asks for, as a clipboard has it: <c>62.5 kg: 5 5 5 5 5</c>.</summary>
    public static string Words(Decision d) => $"{(d.Load is { } load ? $"{load}: " : "")}{string.Join(' ', d.Targets)}";

    private static Performance One(Slot slot, Exercise exercise, string text)
    {
        var (head, sets) = (text.Split(": ")[0].Split(' '), text.Split(": ")[1].Split(' '));
        var asked = head[2].Split('@')[1].Split('x');
        var (load, target) = (Load(head[2].Split('@')[0]), Number(asked[^1]));
        var done = sets.Where(s => s != "cut").Select((s, i) => Set(exercise, i, target, load, s)).ToList();
        return new Performance(Weeks.Date($"{head[0]} {head[1]}"), Asked(slot, exercise, load, target, asked.Length == 2 ? Number(asked[0]) : slot.Scheme.Sets), done, sets[^1] == "cut");
    }

    private static Prescription Asked(Slot slot, Exercise exercise, Mass? load, int target, int sets) => new()
    {
        Slot = slot.Key,
        Motion = slot.Motion,
        Exercise = exercise.Id,
        Scheme = slot.Scheme,
        Targets = [.. Enumerable.Repeat(target, sets)],
        Load = load,
        Rest = slot.Rest,
        Why = new Reason("test", "test"),
    };

    private static SetResult Set(Exercise exercise, int index, int target, Mass? load, string text)
    {
        var parts = text.TrimEnd('~').Split('x');
        var used = parts.Length == 2 ? Load(parts[0]) : load;
        var kind = exercise.Held ? SetKind.Hold : SetKind.Working;
        var set = new SetDone(
            new FactId("test", index + 1), Instant.MinValue, exercise.Id, exercise.Id, kind, index + 1, target, Number(parts[^1]), used);
        return new SetResult(set, text.EndsWith('~'));
    }

    private static Mass? Load(string text) => text switch
    {
        "-" => null,
        _ when text.EndsWith("lb", StringComparison.Ordinal) => Mass.Lb(NumberEntry.Parse(text[..^2])!.Value),
        _ => Mass.Kg(NumberEntry.Parse(text)!.Value),
    };

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
