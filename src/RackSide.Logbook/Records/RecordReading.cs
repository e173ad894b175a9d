using System.Text.Json;
using LiteDB;
using NodaTime;
using NodaTime.Text;

namespace RackSide.Logbook.Records;

/// <summary>Reads what <see cref="RecordWriting"/> wrote back into our documents.</summary>
internal static class RecordReading
{
    /// <summary>The document of an object.</summary>
    /// <exception cref="InvalidDataException">A field is not what it should be.</exception>
    public static BsonDocument Document(JsonElement json)
    {
        var document = new BsonDocument();
        foreach (var property in Of(json, JsonValueKind.Object, "the record").EnumerateObject())
        {
            document[FieldForms.Stored(property.Name)] = Value(property.Name, property.Value);
        }

        return document;
    }

    /// <summary>An element of that kind.</summary>
    /// <exception cref="InvalidDataException">It is of another.</exception>
    public static JsonElement Of(JsonElement json, JsonValueKind kind, string name) =>
        json.ValueKind == kind ? json : throw Unfit(name);

    private static BsonValue Value(string name, JsonElement json)
    {
        var field = FieldForms.Stored(name);
        return json.ValueKind switch
        {
            JsonValueKind.Null => BsonValue.Null,
            JsonValueKind.True or JsonValueKind.False => json.GetBoolean(),
            JsonValueKind.String when FieldForms.IsMoment(field) => Read(InstantPattern.ExtendedIso, json, name).ToUnixTimeTicks(),
            JsonValueKind.String when FieldForms.IsDate(field) => Number(Read(LocalDatePattern.Iso, json, name)),
            JsonValueKind.String when FieldForms.IsHour(field) => Read(LocalTimePattern.ExtendedIso, json, name).NanosecondOfDay,
            JsonValueKind.String when FieldForms.IsIdentity(field) => Identity(json.GetString()!, name),
            JsonValueKind.String => json.GetString()!,
            JsonValueKind.Number when FieldForms.IsSeconds(name) => Whole(json, NodaConstants.TicksPerSecond, name),
            JsonValueKind.Number when FieldForms.IsAmount(field) => Whole(json, 1000, name),
            JsonValueKind.Number => json.TryGetInt32(out var number) ? number : throw Unfit(name),
            JsonValueKind.Array => new BsonArray(json.EnumerateArray().Select(item => Value(name, item))),
            _ => Document(json),
        };
    }

    private static T Read<T>(IPattern<T> pattern, JsonElement json, string name) =>
        pattern.Parse(json.GetString()!) is { Success: true } read ? read.Value : throw Unfit(name);

    private static int Number(LocalDate date) => (date.Year * 10_000) + (date.Month * 100) + date.Day;

    // The rack's name may hold a hyphen itself.
    private static BsonArray Identity(string text, string name) =>
        text.LastIndexOf('-') is >= 0 and var cut && long.TryParse(text[(cut + 1)..], System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var count)
            ? new BsonArray { text[..cut], count }
            : throw Unfit(name);

    private static long Whole(JsonElement json, long times, string name) =>
        json.TryGetDecimal(out var number) && Math.Abs(number) <= long.MaxValue / times && number * times is var whole && whole == decimal.Truncate(whole)
            ? (long)whole
            : throw Unfit(name);

    private static InvalidDataException Unfit(string name) => new($"the field \"{name}\" is missing or not what it should be");
}
