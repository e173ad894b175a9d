namespace RackSide.Logbook.Records;

/// <summary>
/// Which fields of our documents are moments, dates, lengths of time, identities or amounts, and what each is called in a
/// record. The documents keep them as integers; a person reads them as ISO 8601, seconds and decimals.
/// </summary>
internal static class FieldForms
{
    private const string Thousandths = "thousandths", Amount = "amount", Seconds = "-seconds";

    private static readonly HashSet<string> Moments = ["at", "begun", "joined", "ends"];
    private static readonly HashSet<string> Dates = ["date", "from", "until", "on", "born-by"];
    private static readonly HashSet<string> Lengths = ["rest", "change-over", "left", "slept"];
    private static readonly HashSet<string> Hours = ["rises"];
    private static readonly HashSet<string> Identities = ["id", "session", "what", "set", "with"];

    /// <summary>Whether a 64-bit integer of this name is a moment.</summary>
    public static bool IsMoment(string field) => Moments.Contains(field);

    /// <summary>Whether a 32-bit integer of this name is a date.</summary>
    public static bool IsDate(string field) => Dates.Contains(field);

    /// <summary>Whether a 64-bit integer of this name is a length of time; <c>left</c> is also a number of reps, of 32 bits.</summary>
    public static bool IsLength(string field) => Lengths.Contains(field);

    /// <summary>Whether a 64-bit integer of this name is an hour of the day.</summary>
    public static bool IsHour(string field) => Hours.Contains(field);

    /// <summary>Whether a list of this name is an identity.</summary>
    public static bool IsIdentity(string field) => Identities.Contains(field);

    /// <summary>Whether a field holds thousandths of an amount.</summary>
    public static bool IsAmount(string field) => field == Thousandths;

    /// <summary>A document's field as a record calls it: <c>sets-left-out</c> is <c>setsLeftOut</c>.</summary>
    public static string Shown(string field, bool isLength) =>
        field == Thousandths ? Amount : Camel(isLength ? field + Seconds : field);

    /// <summary>A record's field as a document calls it.</summary>
    public static string Stored(string shown)
    {
        var field = shown == Amount ? Thousandths : Kebab(shown);
        return field.EndsWith(Seconds, StringComparison.Ordinal) ? field[..^Seconds.Length] : field;
    }

    /// <summary>Whether a record's field is a length of time.</summary>
    public static bool IsSeconds(string shown) => Kebab(shown).EndsWith(Seconds, StringComparison.Ordinal);

    private static string Camel(string kebab) => !kebab.Contains('-', StringComparison.Ordinal) ? kebab
        : string.Concat(kebab.Split('-').Select((part, i) => i == 0 ? part : char.ToUpperInvariant(part[0]) + part[1..]));

    private static string Kebab(string camel) => !camel.Any(char.IsAsciiLetterUpper) ? camel
        : string.Concat(camel.Select(c => char.IsAsciiLetterUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));
}
