using System.Text.Json;
using LiteDB;
using NodaTime;
using NodaTime.Text;

namespace RackSide.Logbook.Records;

/// <summary>Writes our documents as JSON that a person can read and that loses nothing.</summary>
internal static class RecordWriting
{
    /// <summary>Writes the fields of a document as an object.</summary>
    public static void Write(this Utf8JsonWriter json, BsonDocument document)
    {
        json.WriteStartObject();
        foreach (var (field, value) in document)
        {
            json.WritePropertyName(FieldForms.Shown(field, value.IsInt64 && FieldForms.IsLength(field)));
            json.Write(field, value);
        }

        json.WriteEndObject();
    }

    private static void Write(this Utf8JsonWriter json, string field, BsonValue value)
    {
        switch (value.Type)
        {
            case BsonType.Null:
                json.WriteNullValue();
                break;
            case BsonType.Boolean:
                json.WriteBooleanValue(value.AsBoolean);
                break;
            case BsonType.String:
                json.WriteStringValue(value.AsString);
                break;
            case BsonType.Int32 when FieldForms.IsDate(field):
                json.WriteStringValue(Date(value.AsInt32));
                break;
            case BsonType.Int32:
                json.WriteNumberValue(value.AsInt32);
                break;
            case BsonType.Int64:
                json.WriteLong(field, value.AsInt64);
                break;
            case BsonType.Array when FieldForms.IsIdentity(field):
                json.WriteStringValue($"{value.AsArray[0].AsString}-{value.AsArray[1].AsInt64}");
                break;
            case BsonType.Array:
                json.WriteList(field, value.AsArray);
                break;
            case BsonType.Document:
                json.Write(value.AsDocument);
                break;
            default:
                throw new ArgumentException($"the field '{field}' has no form in a record", nameof(value));
        }
    }

    private static void WriteList(this Utf8JsonWriter json, string field, BsonArray list)
    {
        json.WriteStartArray();
        foreach (var item in list)
        {
            json.Write(field, item);
        }

        json.WriteEndArray();
    }

    private static void WriteLong(this Utf8JsonWriter json, string field, long value)
    {
        if (FieldForms.IsMoment(field))
        {
            json.WriteStringValue(InstantPattern.ExtendedIso.Format(Instant.FromUnixTimeTicks(value)));
        }
        else if (FieldForms.IsLength(field))
        {
            json.WriteNumberValue((decimal)value / NodaConstants.TicksPerSecond);
        }
        else if (FieldForms.IsHour(field))
        {
            json.WriteStringValue(LocalTimePattern.ExtendedIso.Format(LocalTime.FromNanosecondsSinceMidnight(value)));
        }
        else if (FieldForms.IsAmount(field))
        {
            json.WriteNumberValue(value / 1000m);
        }
        else
        {
            throw new ArgumentException($"the field '{field}' has no form in a record", nameof(field));
        }
    }

    private static string Date(int number) =>
        LocalDatePattern.Iso.Format(new LocalDate(number / 10_000, number / 100 % 100, number % 100));
}
