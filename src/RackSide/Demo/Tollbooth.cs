using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Demo;

/// <summary>The invented gym: its kit, its weekdays, its people. demo/README.md tells of it.</summary>
internal static class Tollbooth
{
    /// <summary>The days its history goes back.</summary>
    public const int Days = 12 * 7;

    /// <summary>From this day on, the first being 0, the first strength day of both is one that they share a bar on.</summary>
    public const int SharedFrom = 42;

    /// <summary>Ottoline Marsh: new to lifting; a stall, a holiday, and the small mishaps of a beginning.</summary>
    public static Story Ottoline { get; } = new()
    {
        Joins = at => new Lifter("ottoline", "Ottoline Marsh", MassUnit.Kilogram, at, AvoidInverted: true)
        {
            Body = new() { Height = Height.Cm(168), BornBy = new LocalDate(1985, 3, 9), Sex = FormulaSex.Female, Rises = new LocalTime(6, 30) },
        },
        Seed = 41,
        Hour = 18,
        Away = 49..56,
        OwesAStrengthDay = true,
        Body = new Body
        {
            Strength = new Dictionary<Motion, Growth>
            {
                [Motion.Squat] = new(46, 90),
                [Motion.HorizontalPull] = new(34, 56),
                [Motion.HorizontalPush] = new(31, 48),
                [Motion.VerticalPush] = new(26.5, 40),
                [Motion.ElbowFlexion] = new(21, 34),
                [Motion.ElbowExtension] = new(20, 33),
            },
            Reps = new Growth(7, 15),
            Seconds = new Growth(26, 84),
            Weight = 63.4,
            WeightAWeek = 0.15,
            Scatter = 0.4,
        },
        Nights = new Nights(7.3, 28..42, 5.6),
        Spell = new Spell(Motion.VerticalPush, 9, 11, 0.82),
        Incidents = new Dictionary<int, Incident>
        {
            [2] = new Incident.WrongNumber("squat", 3),
            [5] = new Incident.Taken("squat"),
            [7] = new Incident.Slip("squat", 4),
            [16] = new Incident.OutOfTime("overhead-press"),
        },
    };

    /// <summary>Bram Okafor-Lind: weighs himself in pounds; away for the last three weeks.</summary>
    public static Story Bram { get; } = new()
    {
        Joins = at => new Lifter("bram", "Bram Okafor-Lind", MassUnit.Pound, at)
        {
            Body = new() { Height = Height.Feet(5, 11), BornBy = new LocalDate(1988, 6, 21), Sex = FormulaSex.Male, Activity = DailyActivity.Active },
        },
        Seed = 38,
        Hour = 20,
        Away = (Days - 21)..Days,
        Body = new Body
        {
            Strength = new Dictionary<Motion, Growth>
            {
                [Motion.Squat] = new(84, 128),
                [Motion.HorizontalPull] = new(62, 88),
                [Motion.HorizontalPush] = new(60, 84),
                [Motion.VerticalPush] = new(40, 56),
                [Motion.ElbowFlexion] = new(34, 48),
                [Motion.ElbowExtension] = new(34, 48),
            },
            Reps = new Growth(14, 24),
            Seconds = new Growth(30, 72),
            Weight = 188.6,
            WeightAWeek = 0.2,
            Scatter = 0.9,
        },
        Incidents = new Dictionary<int, Incident> { [10] = new Incident.Slip("squat", 5) },
    };

    /// <summary>Both, in the order they joined.</summary>
    public static IReadOnlyList<Story> Stories { get; } = [Ottoline, Bram];

    /// <summary>
    /// The house rules, on weekdays that make today a strength day: the first or the last of three with a rest day between.
    /// Thursday can only be the day in the middle.
    /// </summary>
    public static HouseRules Rules(LocalDate today) => new(KitDefaults.For(MassUnit.Kilogram), WeekdaysFor(today.DayOfWeek), Sound: true);

    /// <summary>Juno Petrov's plan: the built-in one, but with a smaller push-up total that grows in smaller steps.</summary>
    public static Plan JunosPlan(Plan plan) => plan with { Days = [.. plan.Days.Select(WithSmallTotals)] };

    private static TrainingDay WithSmallTotals(TrainingDay day) => day with
    {
        Slots = [.. day.Slots.Select(s => s.Scheme is Scheme.Total ? s with { Scheme = new Scheme.Total(30), Progress = s.Progress with { GrowBy = 5, UpTo = 100 } } : s)],
    };

    private static IReadOnlyList<IsoDayOfWeek> WeekdaysFor(IsoDayOfWeek today) => today switch
    {
        IsoDayOfWeek.Monday or IsoDayOfWeek.Friday => [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday],
        IsoDayOfWeek.Wednesday or IsoDayOfWeek.Sunday => [IsoDayOfWeek.Wednesday, IsoDayOfWeek.Friday, IsoDayOfWeek.Sunday],
        _ => [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday],
    };
}
