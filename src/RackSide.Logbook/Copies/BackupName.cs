using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace RackSide.Logbook.Copies;

/// <summary>The name of a backup: <c>logbook-2026-11-25.db</c>, and with a number where a date has several.</summary>
/// <param name="Date">The date it was made on.</param>
/// <param name="Number">1 for the first of a date, then one more each.</param>
internal sealed record BackupName(LocalDate Date, int Number) : IComparable<BackupName>
{
    private const string Stem = "logbook-", End = ".db";
    private const int DateLength = 10;

    /// <summary>The file's name.</summary>
    public string Text => $"{Stem}{LocalDatePattern.Iso.Format(Date)}{(Number == 1 ? "" : $"-{Number.ToString(CultureInfo.InvariantCulture)}")}{End}";

    /// <summary>The backup a file's name tells of; null where it tells of none.</summary>
    public static BackupName? Of(string name)
    {
        if (!name.StartsWith(Stem, StringComparison.Ordinal) || !name.EndsWith(End, StringComparison.Ordinal) || name.Length < Stem.Length + DateLength + End.Length)
        {
            return null;
        }

        var (date, number) = (name.Substring(Stem.Length, DateLength), name[(Stem.Length + DateLength)..^End.Length]);
        return LocalDatePattern.Iso.Parse(date) is { Success: true, Value: var made } && NumberOf(number) is { } which ? new BackupName(made, which) : null;
    }

    /// <inheritdoc/>
    public int CompareTo(BackupName? other) => other is null ? 1
        : Date != other.Date ? Date.CompareTo(other.Date)
        : Number.CompareTo(other.Number);

    private static int? NumberOf(string text) => text.Length == 0 ? 1
        : text[0] == '-' && int.TryParse(text[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 1 ? number
        : null;
}
