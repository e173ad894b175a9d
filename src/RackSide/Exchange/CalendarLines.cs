using System.Globalization;
using System.Text;

namespace RackSide.Exchange;

/// <summary>
/// Text of the iCalendar standard, RFC 5545: lines end in CR LF and are folded at 75 octets (section 3.1), text is escaped
/// (section 3.3.11). Written by hand because the usual library makes its values by reflection, which a native program has
/// not; tests read the result with that library.
/// </summary>
internal sealed class CalendarLines
{
    private const int MostOctets = 75;
    private readonly StringBuilder text = new();

    /// <summary>Adds a property whose value is no free text.</summary>
    public CalendarLines Add(string name, string value)
    {
        Fold($"{name}:{value}");
        return this;
    }

    /// <summary>Adds a property of free text.</summary>
    public CalendarLines AddText(string name, string value) => Add(name, Escaped(value));

    /// <inheritdoc/>
    public override string ToString() => text.ToString();

    // Section 3.3.11: a backslash, a semicolon, a comma and a line break are escaped; other control characters are not text.
    private static string Escaped(string value) => string.Concat(value.ReplaceLineEndings("\n").Select(c => c switch
    {
        '\\' or ';' or ',' => $"\\{c}",
        '\n' => "\\n",
        _ when char.IsControl(c) => "",
        _ => c.ToString(CultureInfo.InvariantCulture),
    }));

    // Between characters and never inside one, because a line may be cut in the middle of a word but not of a UTF-8 sequence.
    private void Fold(string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > MostOctets)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune);
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }
}
