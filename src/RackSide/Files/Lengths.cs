using System.Globalization;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Lengths of sleeves and plates, kept in millimetres.</summary>
internal static class Lengths
{
    /// <summary>An inch is 25.4 mm exactly. Source: the 1959 international yard and pound agreement; NIST SP 811, appendix B.</summary>
    private const decimal Inch = 25.4m;

    /// <summary>A length: <c>415 mm</c>, <c>41.5 cm</c>, <c>16.3 in</c>.</summary>
    public static readonly Form<decimal> Form = new("a length", "write a number and mm, cm or in, such as 27 mm", Parse)
    {
        Limits = "1 mm to 1000 mm",
        Plausible = mm => mm is >= 1 and <= 1000,
    };

    /// <summary>A length as it is written.</summary>
    public static string Text(decimal millimetres) => $"{millimetres.ToString("0.####", CultureInfo.InvariantCulture)} mm";

    private static decimal? Parse(string text)
    {
        var unit = new string([.. text.SkipWhile(c => !char.IsLetter(c))]);
        return NumberEntry.Parse(text[..^unit.Length]) is { } number
            ? unit switch { "mm" => number, "cm" => number * 10, "in" => number * Inch, _ => null }
            : null;
    }
}
