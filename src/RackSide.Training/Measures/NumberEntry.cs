using System.Globalization;

namespace RackSide.Training.Measures;

/// <summary>
/// The one reader of numbers a person types. <c>.</c> and <c>,</c> are both the decimal mark and there are no group
/// separators, so "62,5" is 62.5 under every culture and can never turn into 625.
/// </summary>
public static class NumberEntry
{
    /// <summary>The most decimals a typed number may have.</summary>
    public const int MostDecimals = 3;

    /// <summary>Reads a number without a sign: digits, at most one decimal mark, at most three decimals.</summary>
    /// <param name="text">What was typed.</param>
    /// <returns>The number, or null where the text is not one.</returns>
    public static decimal? Parse(string? text)
    {
        var typed = (text ?? "").Trim().Replace(',', '.');
        var marks = typed.Count(c => c == '.');
        var digits = typed.Count(char.IsAsciiDigit);
        if (digits == 0 || marks > 1 || digits + marks != typed.Length || digits > 9)
        {
            return null;
        }

        var decimals = marks == 0 ? 0 : typed.Length - 1 - typed.IndexOf('.', StringComparison.Ordinal);
        return decimals <= MostDecimals
            ? decimal.Parse(typed, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture)
            : null;
    }
}
