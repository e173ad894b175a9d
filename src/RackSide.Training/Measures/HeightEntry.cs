using System.Globalization;
using System.Text.RegularExpressions;

namespace RackSide.Training.Measures;

/// <summary>
/// A height as people type it: <c>178</c>, <c>178 cm</c>, <c>1.78 m</c>; <c>5'10"</c>, <c>5 ft 10</c>, <c>70 in</c>. On a
/// numeric pad, where feet are asked for, <c>5.10</c> is five feet ten.
/// </summary>
public static partial class HeightEntry
{
    /// <summary>The least that is taken for a grown-up's height, cm. Common practice, no source: it catches a slip of a key.</summary>
    public const decimal Least = 120;

    /// <summary>The most that is taken for a height, cm.</summary>
    public const decimal Most = 230;

    /// <summary>The height that was typed, or null where it is none or not plausible.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="bare">What a number without a unit is: centimetres, or feet before the mark and inches after it.</param>
    public static Height? Read(string? text, LengthUnit bare) =>
        Of((text ?? "").Trim().ToLowerInvariant(), bare) is { } height && height.Centimetres is >= Least and <= Most ? height : null;

    /// <summary>What is said where it cannot be read.</summary>
    public static string Refusal(LengthUnit unit) => unit == LengthUnit.Centimetre
        ? "Type a height in centimetres, 120 to 230."
        : "Type feet and inches, 4.0 to 7.6: 5.10 is 5 ft 10 in.";

    private static Height? Of(string text, LengthUnit bare) =>
        Feet().Match(text) is { Success: true } feet ? InFeet(feet)
        : Single().Match(text) is { Success: true } single ? InOne(single, bare)
        : null;

    private static Height? InFeet(Match match) =>
        (Number(match, "inches") ?? 0) is var inches && inches < 12
            ? Height.Feet(int.Parse(match.Groups["feet"].ValueSpan, CultureInfo.InvariantCulture), inches)
            : null;

    private static Height? InOne(Match match, LengthUnit bare) => match.Groups["unit"].Value switch
    {
        "cm" => Height.Cm(Number(match, "number")!.Value),
        "m" => Height.Cm(Number(match, "number")!.Value * 100),
        "in" => new Height(Number(match, "number")!.Value, LengthUnit.Inch),
        _ when bare == LengthUnit.Centimetre || match.Groups["number"].Length > 4 => Bare(Number(match, "number")!.Value),
        _ => Pad(match.Groups["number"].Value),
    };

    // 1.78 without a unit can only be metres.
    private static Height Bare(decimal number) => Height.Cm(number is > 1 and < 3 ? number * 100 : number);

    private static Height? Pad(string number)
    {
        var parts = number.Split('.', ',');
        return parts[0].Length != 1 ? Bare(decimal.Parse(number.Replace(',', '.'), CultureInfo.InvariantCulture))
            : parts.Length == 1 ? Height.Feet(int.Parse(parts[0], CultureInfo.InvariantCulture), 0)
            : int.Parse(parts[1], CultureInfo.InvariantCulture) is var inches and < 12 ? Height.Feet(int.Parse(parts[0], CultureInfo.InvariantCulture), inches)
            : null;
    }

    private static decimal? Number(Match match, string part) => NumberEntry.Parse(match.Groups[part].Value);

    [GeneratedRegex("^(?<feet>\\d)\\s*(?:'|ft)\\s*(?:(?<inches>\\d{1,2}(?:[.,]\\d{1,2})?)\\s*(?:\"|''|in)?)?$")]
    private static partial Regex Feet();

    [GeneratedRegex("^(?<number>\\d{1,3}(?:[.,]\\d{1,2})?)\\s*(?<unit>cm|m|in)?$")]
    private static partial Regex Single();
}
