using System.Globalization;
using NodaTime;
using RackSide.Training.Measures;

namespace RackSide.Training.Body;

/// <summary>What may be typed in a check-in besides the weight. The bounds catch slips of the keys; common practice, no source.</summary>
public static class CheckInEntry
{
    private const int MostHours = 16;
    private const int LeastFood = 300;
    private const int MostFood = 10_000;
    private const int MostLitres = 15;

    /// <summary>Said to hours that cannot be read.</summary>
    public const string SleepRefusal = "Type hours of sleep, 0 to 16: 7.5 or 7:30 is half past seven hours.";

    /// <summary>Said to food that cannot be read.</summary>
    public const string FoodRefusal = "Type food in kilocalories, 300 to 10000; about will do.";

    /// <summary>Said to water that cannot be read.</summary>
    public const string WaterRefusal = "Type what was drunk in litres, 0 to 15.";

    /// <summary>Hours slept: <c>7</c>, <c>7.5</c>, <c>7:30</c>, <c>7h30</c>; null where it is none.</summary>
    public static Duration? Slept(string? typed)
    {
        var parts = (typed ?? "").Trim().ToLowerInvariant().TrimEnd('h').Split(':', 'h');
        var (hours, minutes) = (NumberEntry.Parse(parts[0]), parts.Length > 1 ? NumberEntry.Parse(parts[1]) : 0);
        var whole = parts.Length == 1 || (parts.Length == 2 && minutes < 60 && decimal.IsInteger(hours ?? 0.5m));
        return whole && hours * 60 + minutes is { } all && all <= MostHours * 60
            ? Duration.FromMinutes((double)Math.Round(all))
            : null;
    }

    /// <summary>Food in kilocalories; null where it is none.</summary>
    public static int? Kilocalories(string? typed) =>
        NumberEntry.Parse(typed) is { } food and >= LeastFood and <= MostFood ? (int)Math.Round(food) : null;

    /// <summary>Litres as millilitres; null where they are none.</summary>
    public static int? Millilitres(string? typed) => NumberEntry.Parse(typed) is { } litres and <= MostLitres ? (int)Math.Round(litres * 1000) : null;

    /// <summary>A time of the day: <c>6:30</c>, <c>6.30</c>, <c>6</c>; null where it is none.</summary>
    public static LocalTime? Time(string? typed)
    {
        var parts = (typed ?? "").Trim().Split(':', '.', ',');
        return parts.Length is 1 or 2 && Whole(parts[0]) is { } hour and < 24 && (parts.Length == 1 ? 0 : Whole(parts[1])) is { } minute and < 60
            ? new LocalTime(hour, minute)
            : null;
    }

    private static int? Whole(string text) =>
        text.Length is 1 or 2 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
