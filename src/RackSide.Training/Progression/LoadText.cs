using System.Globalization;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;

namespace RackSide.Training.Progression;

/// <summary>Loads and their changes in the words of a why-line.</summary>
internal static class LoadText
{
    /// <summary><c> at 60 kg</c>, <c> with 30 kg of help</c>, or nothing.</summary>
    public static string At(Mass? load, Exercise exercise) => (load, exercise.LoadType) switch
    {
        (null, _) => "",
        ({ } help, LoadType.Assisted) => $" with {help} of help",
        ({ Amount: 0 }, LoadType.AddedWeight) => " with body weight alone",
        ({ } mass, _) => $" at {mass}",
    };

    /// <summary><c>same load again</c>, <c>same help again</c>, or <c>same again</c>.</summary>
    public static string Same(Mass? load, Exercise exercise) => (load, exercise.LoadType) switch
    {
        (null, _) => "same again",
        (_, LoadType.Assisted) => "same help again",
        _ => "same load again",
    };

    /// <summary><c>2.5 kg more</c> or <c>5 kg less help</c>, and a word of care where the step is over ten per cent.</summary>
    public static string Harder(Mass from, Mass to, Exercise exercise) => exercise.LoadType == LoadType.Assisted
        ? $"{from - to} less help"
        : $"{to - from} more{Care(from, to, exercise)}";

    /// <summary>
    /// <c>10 % lighter, rounded down to 52.5 kg</c>, <c>more help, 35 kg</c>, or <c>lighter, 20 kg, the least there is</c>.
    /// </summary>
    public static string Easier(Mass from, Mass to, int percent, Exercise exercise)
    {
        var aim = from * (1 - (percent / 100m));
        return exercise.LoadType == LoadType.Assisted ? $"more help, {to}"
            : to > aim ? $"lighter, {to}, the least there is"
            : to == aim ? $"{percent} % lighter, {to}"
            : $"{percent} % lighter, rounded down to {to}";
    }

    /// <summary><c>first</c>, <c>second</c> … as far as anybody counts.</summary>
    public static string Ordinal(int number) => number switch
    {
        1 => "first",
        2 => "second",
        3 => "third",
        4 => "fourth",
        5 => "fifth",
        _ => string.Create(CultureInfo.InvariantCulture, $"{number}th"),
    };

    private static string Care(Mass from, Mass to, Exercise exercise) => Ceiling.IsOver(from, to, exercise)
        ? string.Create(CultureInfo.InvariantCulture, $", a big step ({Ceiling.Rise(from, to, exercise):0} %)")
        : "";
}
