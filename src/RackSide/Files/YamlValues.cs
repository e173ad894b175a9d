using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>The one way each measure and word is written in our files, whichever file it stands in.</summary>
internal static class YamlValues
{
    /// <summary>A mass above nothing: <c>20 kg</c>, <c>45 lb</c>, <c>1.25 kg</c>.</summary>
    public static readonly Form<Mass> Mass =
        new("a mass", "write a number and kg or lb, such as 2.5 kg or 45 lb", ParseMass)
        {
            Limits = "0.1 kg to 500 kg",
            Plausible = m => m.Kilograms is >= 0.1m and <= 500,
        };

    /// <summary>A length of time in whole seconds: <c>120 s</c>, <c>2 min</c>.</summary>
    public static readonly Form<Duration> Duration =
        new("a length of time", "write seconds or minutes, such as 120 s or 2 min", ParseDuration);

    private static readonly (string Word, Motion Value)[] Motions =
    [
        ("squat", Training.Exercises.Motion.Squat),
        ("hinge", Training.Exercises.Motion.Hinge),
        ("horizontal_pull", Training.Exercises.Motion.HorizontalPull),
        ("horizontal_push", Training.Exercises.Motion.HorizontalPush),
        ("vertical_pull", Training.Exercises.Motion.VerticalPull),
        ("vertical_push", Training.Exercises.Motion.VerticalPush),
        ("elbow_flexion", Training.Exercises.Motion.ElbowFlexion),
        ("elbow_extension", Training.Exercises.Motion.ElbowExtension),
        ("core_brace", Training.Exercises.Motion.CoreBrace),
        ("single_leg", Training.Exercises.Motion.SingleLeg),
        ("preparation", Training.Exercises.Motion.Preparation),
    ];

    /// <summary>A motion.</summary>
    public static readonly Form<Motion> Motion = WordForm.Of("a motion", Motions);

    /// <summary>A motion's word.</summary>
    public static string MotionWord(Motion motion) => Motions.First(m => m.Value == motion).Word;

    /// <summary>A load type.</summary>
    public static readonly Form<LoadType> Load = WordForm.Of("a kind of load",
        ("barbell", LoadType.Barbell),
        ("dumbbell_pair", LoadType.DumbbellPair),
        ("dumbbell_single", LoadType.DumbbellSingle),
        ("machine_stack", LoadType.MachineStack),
        ("bodyweight", LoadType.Bodyweight),
        ("added_weight", LoadType.AddedWeight),
        ("assisted", LoadType.Assisted),
        ("band", LoadType.Band));

    /// <summary>A day of the week.</summary>
    public static readonly Form<IsoDayOfWeek> Weekday = WordForm.Of("a day of the week",
        ("monday", IsoDayOfWeek.Monday),
        ("tuesday", IsoDayOfWeek.Tuesday),
        ("wednesday", IsoDayOfWeek.Wednesday),
        ("thursday", IsoDayOfWeek.Thursday),
        ("friday", IsoDayOfWeek.Friday),
        ("saturday", IsoDayOfWeek.Saturday),
        ("sunday", IsoDayOfWeek.Sunday));

    /// <summary>A day that a shown week can begin with.</summary>
    public static readonly Form<IsoDayOfWeek> WeekStart = WordForm.Of("a day that a week begins with",
        ("monday", IsoDayOfWeek.Monday),
        ("sunday", IsoDayOfWeek.Sunday),
        ("saturday", IsoDayOfWeek.Saturday));

    /// <summary>A unit of mass.</summary>
    public static readonly Form<MassUnit> Unit = new("a unit of mass", "write kg or lb", text => MassUnits.Parse(text));

    /// <summary>A switch.</summary>
    public static readonly Form<bool> Switch = WordForm.Of("on or off", ("on", true), ("off", false));

    /// <summary>Room on a disk in megabytes: <c>64 MB</c>; <c>off</c> is none.</summary>
    public static readonly Form<int> Megabytes = new("an amount of room", "write megabytes such as 64 MB, or off", ParseMegabytes)
    {
        Limits = "1 MB to 100000 MB",
        Plausible = n => n is >= 0 and <= 100_000,
    };

    /// <summary>Yes or no, as YAML itself writes them.</summary>
    public static readonly Form<bool> Truth = WordForm.Of("true or false", ("true", true), ("false", false));

    /// <summary>A whole number within limits.</summary>
    public static Form<int> Whole(int low, int high, string example) =>
        new("a whole number", $"write a whole number, such as {example}", ParseAnyWhole)
        {
            Limits = $"{low} to {high}",
            Plausible = n => n >= low && n <= high,
        };

    /// <summary>The whole number a text is, without a sign; null where it is none.</summary>
    public static int? ParseWhole(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The same with a sign and of any length, so that one far outside is told as outside and not as no number.</summary>
    private static int? ParseAnyWhole(string text) =>
        !text.StartsWith('-') ? (text.Length > 0 && text.All(char.IsAsciiDigit) ? ParseWhole(text) ?? int.MaxValue : null)
        : ParseAnyWhole(text[1..]) is { } number ? -number
        : null;

    private static Mass? ParseMass(string text)
    {
        var (number, unit) = Split(text);
        return number is { } amount && MassUnits.Parse(unit) is { } known ? new Mass(amount, known) : null;
    }

    private static int? ParseMegabytes(string text)
    {
        var (number, unit) = Split(text);
        return text == "off" ? 0 : unit.Equals("MB", StringComparison.OrdinalIgnoreCase) && number is > 0 and <= int.MaxValue && number == decimal.Truncate(number.Value) ? (int)number : null;
    }

    private static Duration? ParseDuration(string text)
    {
        var (number, unit) = Split(text);
        decimal? seconds = unit switch
        {
            "s" => number,
            "min" => number * 60,
            _ => null,
        };
        return seconds is { } whole && whole == decimal.Truncate(whole) && whole <= 86_400
            ? NodaTime.Duration.FromSeconds((long)whole)
            : null;
    }

    /// <summary>A text cut into its number and the letters after it.</summary>
    private static (decimal? Number, string Unit) Split(string text)
    {
        var end = 0;
        while (end < text.Length && !char.IsLetter(text[end]))
        {
            end++;
        }

        return (NumberEntry.Parse(text[..end]), text[end..]);
    }
}
