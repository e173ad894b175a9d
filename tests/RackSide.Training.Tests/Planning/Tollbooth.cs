using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Training.Tests.Planning;

/// <summary>The garage of the invented scenario: its plan, its catalogue, its kit, and a way to live through days there.</summary>
internal static class Tollbooth
{
    public static GymKit Garage { get; } = KitDefaults.For(MassUnit.Kilogram);

    public static Lifter Ottoline { get; } = new("ottoline", "Ottoline Marsh", MassUnit.Kilogram, Instant.FromUtc(2026, 11, 1, 12, 0));

    public static Catalogue AllExercises { get; } = new(
    [
        Exercise("back-squat", "squat", Motion.Squat, LoadType.Barbell, "barbell", "rack", "safety bars"),
        Exercise("goblet-squat", "goblet squat", Motion.Squat, LoadType.DumbbellSingle, "dumbbells"),
        Exercise("leg-press", "leg press", Motion.Squat, LoadType.MachineStack, "leg press machine"),
        Exercise("air-squat", "air squat", Motion.Squat, LoadType.Bodyweight),
        Exercise("bb-row", "row", Motion.HorizontalPull, LoadType.Barbell, "barbell"),
        Exercise("bench-press", "bench press", Motion.HorizontalPush, LoadType.Barbell, "barbell", "bench", "rack", "safety bars"),
        Exercise("push-up", "push-up", Motion.HorizontalPush, LoadType.Bodyweight),
        Exercise("lat-pulldown", "pulldown", Motion.VerticalPull, LoadType.MachineStack, "cable stack"),
        Exercise("assisted-chin-up", "helped chin-up", Motion.VerticalPull, LoadType.Assisted, "pull-up bar", "band"),
        Exercise("dead-hang", "dead hang", Motion.VerticalPull, LoadType.Bodyweight, "pull-up bar") with { Held = true },
        Exercise("overhead-press", "overhead press", Motion.VerticalPush, LoadType.Barbell, "barbell", "rack"),
        Exercise("wall-handstand", "wall handstand", Motion.VerticalPush, LoadType.Bodyweight, "wall") with { Held = true, Inverted = true },
        Exercise("db-curl", "curl", Motion.ElbowFlexion, LoadType.DumbbellPair, "dumbbells"),
        Exercise("overhead-ext", "extension", Motion.ElbowExtension, LoadType.DumbbellSingle, "dumbbells"),
        Exercise("plank-forearm", "plank", Motion.CoreBrace, LoadType.Bodyweight, "mat") with { Held = true },
        Exercise("side-plank", "side plank", Motion.CoreBrace, LoadType.Bodyweight, "mat") with { Held = true, OneSided = true },
        Exercise("wrists", "wrists", Motion.Preparation, LoadType.Bodyweight),
    ]);

    public static TrainingDay StrengthDay { get; } = new("strength", "strength day", DayKind.Strength,
    [
        Slot("squat", Motion.Squat, new Scheme.Fixed(5, 5), 120, "back-squat") with { Ramp = RampKind.Full },
        Slot("row", Motion.HorizontalPull, new Scheme.Range(3, 6, 12), 90, "bb-row") with { Ramp = RampKind.Short },
        Slot("bench", Motion.HorizontalPush, new Scheme.Range(3, 6, 12), 90, "bench-press") with { Ramp = RampKind.Short },
        Slot("pull", Motion.VerticalPull, new Scheme.Range(3, 6, 12), 90, "lat-pulldown", "assisted-chin-up"),
        Slot("press", Motion.VerticalPush, new Scheme.Range(3, 6, 12), 90, "overhead-press"),
        Slot("curl", Motion.ElbowFlexion, new Scheme.Range(3, 6, 12), 60, "db-curl") with { Group = "arms" },
        Slot("extension", Motion.ElbowExtension, new Scheme.Range(3, 6, 12), 60, "overhead-ext") with { Group = "arms" },
        Slot("core", Motion.CoreBrace, new Scheme.Hold(3, 20, 60), 60, "plank-forearm"),
    ]);

    public static TrainingDay SkillsDay { get; } = new("skills", "skills day", DayKind.Skills,
    [
        Slot("wrists", Motion.Preparation, new Scheme.Tick(3), 0, "wrists"),
        Slot("handstand", Motion.VerticalPush, new Scheme.Hold(3, 10, 60), 60, "wall-handstand"),
        Slot("push-ups", Motion.HorizontalPush, new Scheme.Total(100), 0, "push-up"),
    ]);

    public static Plan Beginners { get; } = new("Tollbooth beginners", [StrengthDay, SkillsDay], new Dictionary<IsoDayOfWeek, string>
    {
        [IsoDayOfWeek.Monday] = "strength",
        [IsoDayOfWeek.Wednesday] = "skills",
        [IsoDayOfWeek.Friday] = "strength",
    });

    public static LocalDate Monday { get; } = new(2026, 11, 2);

    public static TodaysPlan Today(TrainingHistory history, LocalDate date, TrainingDay? asked = null) =>
        Planner.For(Beginners, AllExercises, Garage, Ottoline, history, date, asked);

    /// <summary>The history with today's plan done, where there is one; each set by what <paramref name="does"/> says.</summary>
    public static TrainingHistory Live(TrainingHistory history, LocalDate date, Func<Prescription, int, int> does)
    {
        var today = Today(history, date);
        return today.Day is null ? history : new([.. history.Sessions, Session(today, date, does)]);
    }

    /// <summary>A session with every set done as told.</summary>
    public static SessionRecord Session(TodaysPlan today, LocalDate date, Func<Prescription, int, int> does)
    {
        var at = date.At(new LocalTime(18, 0)).InUtc().ToInstant();
        var sequence = Period.DaysBetween(Monday, date) * 1000L;
        var head = new SessionHead
        {
            Id = new FactId("test", ++sequence),
            Begun = at,
            Date = date,
            Zone = "Europe/London",
            Lifter = Ottoline.Key,
            Plan = Beginners.Name,
            DayKey = today.Day!.Key,
            DayName = today.Day.Name,
            Kind = today.Day.Kind,
            Prescriptions = today.Prescriptions,
        };
        var sets = today.Prescriptions.SelectMany(p => p.Targets.Select((target, i) => (Fact)new SetDone(
            new FactId("test", ++sequence), at, p.Slot, p.Exercise, Kind(p), i + 1, target, does(p, i), p.Load))).ToList();
        return new SessionRecord(head, [.. sets, new SessionClosed(new FactId("test", ++sequence), at)]);
    }

    /// <summary>Does what is asked.</summary>
    public static int AsAsked(Prescription p, int set) => p.Targets[set];

    private static SetKind Kind(Prescription p) => p.Scheme switch
    {
        Scheme.Hold => SetKind.Hold,
        Scheme.Total => SetKind.Share,
        _ => SetKind.Working,
    };

    private static Exercise Exercise(string id, string name, Motion motion, LoadType type, params string[] equipment) => new()
    {
        Id = id,
        Name = name,
        ShortName = name,
        Motion = motion,
        LoadType = type,
        Equipment = equipment,
        Cues = new CueCard("set up", "down", "up", "fault", "stop"),
    };

    private static Slot Slot(string key, Motion motion, Scheme scheme, int restSeconds, params string[] exercises) => new()
    {
        Key = key,
        Motion = motion,
        Exercises = exercises,
        Scheme = scheme,
        Rest = Duration.FromSeconds(restSeconds),
        Progress = new ProgressRule(scheme switch
        {
            Scheme.Fixed => ProgressKind.StepWhenAllMet,
            Scheme.Range => ProgressKind.WorkUpRange,
            Scheme.Hold => ProgressKind.LongerHold,
            _ => ProgressKind.None,
        }),
    };
}
