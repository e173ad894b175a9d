using NodaTime;
using RackSide.Training.Plans;

namespace RackSide.Training.Schedule;

/// <summary>What is due on a date and why, before anyone asked what comes next.</summary>
internal readonly record struct Answer(DueKind Kind, TrainingDay? Day, string Why)
{
    /// <summary>A training day is due.</summary>
    public static Answer Train(TrainingDay day, string why) => new(DueKind.Train, day, why);

    /// <summary>Nothing is.</summary>
    public static Answer Rest(string why) => new(DueKind.Rest, null, why);

    /// <summary>The kind of a day in words: <c>Monday is a strength day</c>.</summary>
    public static string Named(LocalDate date, TrainingDay day) => $"{date.Weekday()} is a {Kinds(day)} day";

    /// <summary><c>strength</c> or <c>skills</c>.</summary>
    public static string Kinds(TrainingDay day) => day.Kind == DayKind.Strength ? "strength" : "skills";
}
