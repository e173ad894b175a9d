using LiteDB;
using NodaTime;

namespace RackSide.Logbook.Documents;

/// <summary>Dates and times as integers: they sort as numbers whatever the machine's culture data say.</summary>
internal static class Times
{
    /// <summary>Ticks of 100 ns since 1970-01-01T00:00Z; a finer instant is cut to that.</summary>
    public static BsonValue Of(Instant instant) => instant.ToUnixTimeTicks();

    /// <summary>The instant of a field.</summary>
    public static Instant Instant(this BsonDocument document, string name) =>
        NodaTime.Instant.FromUnixTimeTicks(document.Long(name));

    /// <summary>The instant of a field, or null.</summary>
    public static Instant? InstantOrNull(this BsonDocument document, string name) =>
        document[name].IsNull ? null : document.Instant(name);

    /// <summary>Ticks of 100 ns; a finer duration is cut to that.</summary>
    public static BsonValue Of(Duration duration) => duration.BclCompatibleTicks;

    /// <summary>The duration of a field.</summary>
    public static Duration Duration(this BsonDocument document, string name) =>
        NodaTime.Duration.FromTicks(document.Long(name));

    /// <summary>An ISO date as year, month and day in one number: 20260304.</summary>
    /// <exception cref="ArgumentException">The year is not 1 to 9999.</exception>
    public static BsonValue Of(LocalDate date)
    {
        var iso = date.WithCalendar(CalendarSystem.Iso);
        return iso.Year is >= 1 and <= 9999
            ? iso.Year * 10_000 + iso.Month * 100 + iso.Day
            : throw new ArgumentException($"the logbook keeps the years 1 to 9999, not {iso.Year}", nameof(date));
    }

    /// <summary>The date of a field.</summary>
    /// <exception cref="InvalidDataException">It is no date.</exception>
    public static LocalDate Date(this BsonDocument document, string name)
    {
        try
        {
            return Date(document.Int(name));
        }
        catch (ArgumentOutOfRangeException e)
        {
            throw new InvalidDataException($"the field '{name}' is no date", e);
        }
    }

    /// <summary>The date that such a number names.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It names none.</exception>
    public static LocalDate Date(int number) => new(number / 10_000, number / 100 % 100, number % 100);

    /// <summary>The date of a field, or null.</summary>
    public static LocalDate? DateOrNull(this BsonDocument document, string name) =>
        document[name].IsNull ? null : document.Date(name);
}
