using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Safety;
using RackSide.Training.Sessions;

namespace RackSide.Tollbooth;

/// <summary>A short strength day and a skills day at the Tollbooth, for tests of sessions.</summary>
internal static class TollboothDay
{
    public static readonly Instant Evening = Instant.FromUtc(2026, 11, 25, 18, 0);

    public static readonly LocalDate Wednesday = new(2026, 11, 25);

    public static Catalogue Catalogue { get; } = new(
    [
        Exercise("back-squat", "Barbell back squat", Motion.Squat, LoadType.Barbell),
        Exercise("front-squat", "Barbell front squat", Motion.Squat, LoadType.Barbell),
        Exercise("goblet-squat", "Goblet squat", Motion.Squat, LoadType.DumbbellSingle),
        Exercise("bb-row", "Bent-over barbell row", Motion.HorizontalPull, LoadType.Barbell),
        Exercise("db-curl", "Dumbbell curl", Motion.ElbowFlexion, LoadType.DumbbellPair),
        Exercise("close-push-up", "Close-hand push-up", Motion.ElbowExtension, LoadType.Bodyweight),
        Exercise("plank", "Forearm plank", Motion.CoreBrace, LoadType.Bodyweight) with { Held = true },
        Exercise("side-plank", "Side plank", Motion.CoreBrace, LoadType.Bodyweight) with { Held = true, OneSided = true },
        Exercise("feet-on-wall", "Feet-on-wall plank", Motion.VerticalPush, LoadType.Bodyweight) with { Held = true, Inverted = true },
        Exercise("push-up", "Push-up", Motion.HorizontalPush, LoadType.Bodyweight),
        Exercise("wrists", "Wrist preparation", Motion.Preparation, LoadType.Bodyweight),
    ]);

    public static TrainingDay Strength { get; } = new("strength-day", "Strength day", DayKind.Strength,
    [
        Slot("squat", Motion.Squat, "back-squat", new Scheme.Fixed(5, 5), 120, ProgressKind.StepWhenAllMet, RampKind.Full),
        Slot("row", Motion.HorizontalPull, "bb-row", new Scheme.Range(3, 6, 12), 120, ProgressKind.WorkUpRange, RampKind.Short),
        Slot("curl", Motion.ElbowFlexion, "db-curl", new Scheme.Range(3, 8, 12), 75, ProgressKind.WorkUpRange, RampKind.None) with { Group = "arms" },
        Slot("extension", Motion.ElbowExtension, "close-push-up", new Scheme.Range(3, 8, 12), 75, ProgressKind.WorkUpRange, RampKind.None) with { Group = "arms" },
        Slot("core", Motion.CoreBrace, "plank", new Scheme.Hold(3, 20, 60), 60, ProgressKind.LongerHold, RampKind.None),
    ]);

    public static TrainingDay Skills { get; } = new("skills-day", "Skills day", DayKind.Skills,
    [
        Slot("wrists", Motion.Preparation, "wrists", new Scheme.Tick(2), 0, ProgressKind.None, RampKind.None),
        Slot("push-ups", Motion.HorizontalPush, "push-up", new Scheme.Total(30), 60, ProgressKind.None, RampKind.None),
        Slot("core", Motion.CoreBrace, "plank", new Scheme.Hold(2, 20, 60), 60, ProgressKind.LongerHold, RampKind.None),
    ]);

    public static TrainingDay Wall { get; } = new("wall-day", "Wall day", DayKind.Skills,
    [
        Slot("time", Motion.CoreBrace, "plank", new Scheme.Accumulate(60, 60), 30, ProgressKind.None, RampKind.None),
        Slot("sides", Motion.CoreBrace, "side-plank", new Scheme.Hold(2, 20, 45), 30, ProgressKind.LongerHold, RampKind.None),
        Slot("wall", Motion.VerticalPush, "feet-on-wall", new Scheme.Hold(2, 15, 40), 60, ProgressKind.LongerHold, RampKind.None),
    ]);

    public static Lifter Ottoline { get; } = new("ottoline", "Ottoline Marsh", MassUnit.Kilogram, Evening);

    public static GymKit Kit { get; } = KitDefaults.For(MassUnit.Kilogram) with
    {
        Bars = [new Bar("bar", Mass.Kg(20))],
        Plates = [.. new[] { 20m, 10m, 5m, 2.5m, 1.25m }.Select(m => new PlatePairs(Mass.Kg(m), 2))],
        Dumbbells = [.. Enumerable.Range(2, 9).Select(i => Mass.Kg(i * 2.5m))],
    };

    /// <summary>What a day asks for after this history; a first session where there is none.</summary>
    public static Session Begin(TrainingDay day, params SessionRecord[] before)
    {
        var history = new TrainingHistory(before);
        var prescriptions = Planner.Prescriptions(day, Catalogue, Kit, Ottoline, history, Wednesday);
        var head = new SessionHead
        {
            Id = new FactId("rack", 1000),
            Begun = Evening,
            Date = Wednesday,
            Zone = "Europe/London",
            Lifter = Ottoline.Key,
            Plan = "Tollbooth plan",
            DayKey = day.Key,
            DayName = day.Name,
            Kind = day.Kind,
            Prescriptions = prescriptions,
        };
        return Session.Begin(Setting(day, history), head);
    }

    /// <summary>A strength day on Monday in which the squat was done at this load with these reps.</summary>
    public static SessionRecord SquatOnMonday(decimal kg, params int[] reps)
    {
        var squat = Planner.Prescribe(Strength.Slots[0], Catalogue["back-squat"], Kit, TrainingHistory.Empty, Wednesday.PlusDays(-2))
            with
        { Load = Mass.Kg(kg) };
        var at = Evening - Duration.FromDays(2);
        var head = new SessionHead
        {
            Id = new FactId("rack", 1),
            Begun = at,
            Date = Wednesday.PlusDays(-2),
            Zone = "Europe/London",
            Lifter = Ottoline.Key,
            Plan = "Tollbooth plan",
            DayKey = Strength.Key,
            DayName = Strength.Name,
            Kind = DayKind.Strength,
            Prescriptions = [squat],
        };
        var sets = reps.Select((r, i) => (Fact)new SetDone(
            new FactId("rack", 2 + i), at + Duration.FromMinutes(i), "squat", "back-squat", SetKind.Working, i + 1, 5, r, Mass.Kg(kg)));
        return new SessionRecord(head, [.. sets, new SessionClosed(new FactId("rack", 99), at + Duration.FromHours(1))]);
    }

    /// <summary>A strength day on Monday with every set done as asked, so that nothing is a first time on Wednesday.</summary>
    public static SessionRecord WholeMonday()
    {
        var asked = Planner.Prescriptions(Strength, Catalogue, Kit, Ottoline, TrainingHistory.Empty, Wednesday.PlusDays(-2));
        var head = SquatOnMonday(20, 5).Head with { Prescriptions = asked };
        var sets = asked.SelectMany(p => p.Targets.Select((target, i) => (p, target, i))).Select((t, n) => (Fact)new SetDone(
            new FactId("rack", 2 + n), head.Begun + Duration.FromMinutes(n), t.p.Slot, t.p.Exercise, t.p.Scheme is Scheme.Hold ? SetKind.Hold : SetKind.Working, t.i + 1, t.target, t.target, t.p.Load));
        return new SessionRecord(head, [.. sets, new SessionClosed(new FactId("rack", 99), head.Begun + Duration.FromHours(1))]);
    }

    public static SessionSetting Setting(TrainingDay day, TrainingHistory before) => new()
    {
        Day = day,
        Catalogue = Catalogue,
        Loads = new KitLoads(Kit),
        Lifter = Ottoline,
        Before = before,
        Checks = [new CheckItem("collars-on", "collars on"), new CheckItem("floor-clear", "floor clear")],
    };

    private static Exercise Exercise(string id, string name, Motion motion, LoadType load) => new()
    {
        Id = id,
        Name = name,
        ShortName = id.Replace('-', ' '),
        Motion = motion,
        LoadType = load,
        Cues = new CueCard("whole foot planted, brace", "sit between the hips, knees out", "chest and hips rise together", "heels lift: less depth, slower", "sharp pain in knee or back"),
    };

    private static Slot Slot(string key, Motion motion, string exercise, Scheme scheme, int rest, ProgressKind rule, RampKind ramp) => new()
    {
        Key = key,
        Motion = motion,
        Exercises = [exercise],
        Scheme = scheme,
        Rest = Duration.FromSeconds(rest),
        Progress = new ProgressRule(rule),
        Ramp = ramp,
    };
}
