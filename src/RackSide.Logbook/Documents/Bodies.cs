using LiteDB;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Documents;

/// <summary>What a lifter told for the numbers on food, water and sleep; and what was told of a day. A field that was not told is missing.</summary>
internal static class Bodies
{
    /// <summary>The document for a profile.</summary>
    public static BsonDocument Of(BodyProfile profile)
    {
        var document = new BsonDocument
        {
            ["activity"] = Words.Activities.Of(profile.Activity),
            ["no-targets"] = profile.NoTargets,
            ["hidden"] = profile.Hidden,
        };
        Put(document, "height", profile.Height, Of);
        Put(document, "born-by", profile.BornBy, Times.Of);
        Put(document, "sex", profile.Sex, Words.FormulaSexes.Of);
        Put(document, "rises", profile.Rises, time => time.NanosecondOfDay);
        return document;
    }

    /// <summary>The profile of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static BodyProfile Read(BsonDocument document) => new()
    {
        Activity = Words.Activities.Read(document, "activity"),
        NoTargets = document.Flag("no-targets"),
        Hidden = document.Flag("hidden"),
        Height = Known(document, "height") ? HeightOf(document.Inner("height")) : null,
        BornBy = document.DateOrNull("born-by"),
        Sex = Known(document, "sex") ? Words.FormulaSexes.Read(document, "sex") : null,
        Rises = Known(document, "rises") ? Time(document.Long("rises")) : null,
    };

    /// <summary>The document for what was told of a day.</summary>
    public static BsonDocument Of(DayTold day)
    {
        var document = new BsonDocument { ["is"] = "day", ["on"] = Times.Of(day.On) };
        Put(document, "slept", day.Slept, Times.Of);
        Put(document, "kilocalories", day.Kilocalories, n => n);
        Put(document, "millilitres", day.Millilitres, n => n);
        Put(document, "sore", day.Sore, Words.Sorenesses.Of);
        return document;
    }

    /// <summary>What was told of a day.</summary>
    /// <exception cref="InvalidDataException">The document is none.</exception>
    public static DayTold Day(BsonDocument document) => new(document.Id("id"), document.Instant("at"), document.Date("on"))
    {
        Slept = Known(document, "slept") ? document.Duration("slept") : null,
        Kilocalories = Known(document, "kilocalories") ? document.Int("kilocalories") : null,
        Millilitres = Known(document, "millilitres") ? document.Int("millilitres") : null,
        Sore = Known(document, "sore") ? Words.Sorenesses.Read(document, "sore") : null,
    };

    // Thousandths of the unit it was told in, as masses are kept.
    private static BsonDocument Of(Height height) => height.Amount * 1000 is var thousandths && thousandths == decimal.Truncate(thousandths)
        ? new() { ["thousandths"] = (long)thousandths, ["unit"] = Words.Lengths.Of(height.Unit) }
        : throw new ArgumentException($"the logbook keeps at most three decimals, not {height.Amount}", nameof(height));

    private static Height HeightOf(BsonDocument document) =>
        new(document.Long("thousandths") / 1000m, Words.Lengths.Read(document, "unit"));

    private static LocalTime Time(long nanoseconds) => nanoseconds is >= 0 and < NodaConstants.NanosecondsPerDay
        ? LocalTime.FromNanosecondsSinceMidnight(nanoseconds)
        : throw new InvalidDataException("the field 'rises' is no time of the day");

    private static bool Known(BsonDocument document, string name) => !document[name].IsNull;

    private static void Put<T>(BsonDocument document, string name, T? value, Func<T, BsonValue> of)
        where T : struct
    {
        if (value is { } known)
        {
            document[name] = of(known);
        }
    }
}
