using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Planning;

/// <summary>
/// What to expect of the first six weeks, a line a week. Strength gained then is mostly skill: the nerves learn the lift
/// before the muscle grows (Moritani and deVries 1979, Am J Phys Med 58(3):115-130; Sale 1988, MSSE 20(5):S135-145, both
/// from memory). So steps come fast, and say little of the muscle.
/// </summary>
public static class EarlyWeeks
{
    private static readonly string[] Lines =
    [
        "Week 1: learn the lifts; easy is right.",
        "Week 2: some soreness is usual, pain is not.",
        "Week 3: steps come fast while you learn.",
        "Week 4: still mostly skill; keep the form.",
        "Week 5: loads begin to feel like work.",
        "Week 6: steps may slow from here; that is usual.",
    ];

    /// <summary>The line of the week, counted from the first training day; null before it and after six weeks.</summary>
    public static string? Line(TrainingHistory history, LocalDate today)
    {
        var first = history.Days is [var done, ..] ? done.Date : (LocalDate?)null;
        return first is { } day && day <= today ? Lines.ElementAtOrDefault(Period.DaysBetween(day, today) / 7) : null;
    }
}
