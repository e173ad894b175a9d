using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>
/// How ready somebody is, told as sleep and soreness and never as a score: a number would claim to know what nobody measured.
/// The plan stands; the first sets tell more than any number. Common practice, our own words.
/// </summary>
public static class Readiness
{
    /// <summary>What last night and this morning come to, in one sentence; null where nothing was told of the day.</summary>
    /// <param name="day">What was told of it.</param>
    public static string? Of(DayTold? day) => Told(day) is not { Length: > 0 } told ? null : $"{told}: {Advice(day!)}.";

    private static string Told(DayTold? day) =>
        string.Join(", ", new[] { day?.Slept is { } slept ? $"slept {Text(slept)}" : null, day?.Sore is { } sore ? Text(sore) : null }.OfType<string>());

    private static string Advice(DayTold day) =>
        day.Sore == Soreness.Much ? "warm up longer, spare what is very sore, and leave out what hurts"
        : day.Slept < SleepAdvice.Floor ? "a short night; the plan stands, stop a rep earlier and go to bed early"
        : "the plan stands";

    /// <summary>Soreness in words.</summary>
    public static string Text(Soreness sore) => sore switch
    {
        Soreness.None => "not sore",
        Soreness.Some => "a little sore",
        _ => "very sore",
    };

    /// <summary>A length of sleep in words: <c>7 h 10</c>.</summary>
    public static string Text(Duration slept)
    {
        var minutes = (int)Math.Round(slept.TotalMinutes);
        return minutes % 60 == 0 ? $"{minutes / 60} h" : $"{minutes / 60} h {minutes % 60:00}";
    }
}
