using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Tests.Schedule;

/// <summary>A plan with the usual week, and dates of November 2026 written as a coach would: <c>Mon 23</c>.</summary>
internal static class Weeks
{
    private static Slot Squat { get; } = new()
    {
        Key = "squat",
        Motion = Motion.Squat,
        Exercises = ["back-squat"],
        Scheme = new Scheme.Fixed(5, 5),
        Rest = Duration.FromMinutes(2),
        Progress = new ProgressRule(ProgressKind.StepWhenAllMet),
    };

    public static TrainingDay Strength { get; } = new("strength", "Strength day", DayKind.Strength, [Squat]);

    public static TrainingDay Skills { get; } = new("skills", "Skills day", DayKind.Skills, [Squat]);

    public static Plan Usual { get; } = new("Tollbooth beginners", [Strength, Skills], new Dictionary<IsoDayOfWeek, string>
    {
        [IsoDayOfWeek.Monday] = "strength",
        [IsoDayOfWeek.Wednesday] = "skills",
        [IsoDayOfWeek.Friday] = "strength",
    });

    /// <summary>Reads <c>Mon 23</c> as 23 November 2026; past 30 it runs on into December. The weekday must be right.</summary>
    public static LocalDate Date(string text)
    {
        var parts = text.Trim().Split(' ');
        var date = new LocalDate(2026, 11, 1).PlusDays(int.Parse(parts[1], CultureInfo.InvariantCulture) - 1);
        date.DayOfWeek.ToString()[..3].Should().Be(parts[0], "the table must be right about its weekdays");
        return date;
    }

    /// <summary>Reads <c>Mon 23 strength, Wed 25 skills</c>; <c>-</c> is nothing, and days away are passed over.</summary>
    public static IReadOnlyList<DayDone> Done(string text) =>
        [.. Pieces(text).Where(p => p[0] != "away").Select(p => new DayDone(Date($"{p[0]} {p[1]}"), p[2]))];

    /// <summary>Reads the days away out of the same text: <c>away Sat 7 to Tue 10</c>, or <c>away Sat 7 on</c> with no end.</summary>
    public static IReadOnlyList<DaysAway> Away(string text) =>
    [
        .. Pieces(text).Where(p => p[0] == "away")
            .Select(p => new DaysAway(Date($"{p[1]} {p[2]}"), p[3] == "on" ? null : Date($"{p[4]} {p[5]}"))),
    ];

    /// <summary>Reads <c>Mon</c>.</summary>
    public static IsoDayOfWeek Weekday(string text) => Enum.GetValues<IsoDayOfWeek>().Single(d => d.ToString()[..3] == text);

    private static IEnumerable<string[]> Pieces(string text) => text == "-" ? [] : text.Split(',').Select(p => p.Trim().Split(' '));
}
