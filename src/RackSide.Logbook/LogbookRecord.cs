using System.Text.Encodings.Web;
using System.Text.Json;
using LiteDB;
using NodaTime;
using NodaTime.Text;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Records;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook;

/// <summary>
/// A lifter's or a household's record as one JSON file that another program or person can read: docs/export.md describes
/// it. Everything is in it but a PIN, also what was taken back, so that it can be read back without loss.
/// </summary>
public static class LogbookRecord
{
    /// <summary>What the file says it is.</summary>
    public const string Format = "rackside-record";

    /// <summary>The version of what is written; it grows when a reader would have to change.</summary>
    public const int Version = 1;

    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The record.</summary>
    /// <param name="of">What to tell.</param>
    /// <param name="lifter">Whose; null for everybody's.</param>
    /// <param name="now">When it is made.</param>
    /// <returns>UTF-8 text.</returns>
    public static byte[] Write(LogbookSnapshot of, string? lifter, Instant now)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Readable))
        {
            json.WriteStartObject();
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.WriteString("made", InstantPattern.ExtendedIso.Format(now));
            json.WriteString("rack", of.Contents.Rack);
            Lists(json, of.Contents, key => lifter is null || key == lifter);
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    /// <summary>Reads a record.</summary>
    /// <exception cref="LogbookUnreadableException">It is none, or a newer version wrote it, or a field is not what it should be.</exception>
    public static LogbookSnapshot Read(ReadOnlyMemory<byte> utf8)
    {
        try
        {
            using var json = JsonDocument.Parse(utf8);
            return new LogbookSnapshot(Contents(json.RootElement));
        }
        catch (System.Text.Json.JsonException e)
        {
            throw new LogbookUnreadableException($"this is not JSON: {e.Message}", e);
        }
        catch (InvalidDataException e)
        {
            throw new LogbookUnreadableException($"this is no record of RackSide that can be read: {e.Message}", e);
        }
    }

    private static void Lists(Utf8JsonWriter json, Contents contents, Func<string, bool> holds)
    {
        List(json, "lifters", contents.Lifters.Where(l => holds(l.Key)).Select(l => Documents.Lifters.Of(l with { Pin = null })));
        List(json, "sessions", contents.Sessions.Where(s => holds(s.Head.Lifter)).OrderBy(s => s.Head.Id).Select(Sessions.WrittenOut));
        List(json, "weighIns", contents.Weights.Where(w => holds(w.Lifter)).OrderBy(w => w.Date).Select(Weights.Of));
        List(json, "told", contents.Told.Where(t => holds(t.Lifter)).OrderBy(t => t.Fact.Id).Select(Documents.Told.Of));
    }

    private static void List(Utf8JsonWriter json, string name, IEnumerable<BsonDocument> documents)
    {
        json.WriteStartArray(name);
        foreach (var document in documents)
        {
            json.Write(document);
        }

        json.WriteEndArray();
    }

    private static Contents Contents(JsonElement json)
    {
        var head = RecordReading.Of(json, JsonValueKind.Object, "the file");
        if (!head.TryGetProperty("format", out var format) || format.ValueKind != JsonValueKind.String || format.GetString() != Format)
        {
            throw new InvalidDataException($"its format is not \"{Format}\"");
        }

        if (!head.TryGetProperty("version", out var version) || !version.TryGetInt32(out var number) || number is < 1 or > Version)
        {
            throw new InvalidDataException($"its version is not {Version}; a newer RackSide wrote it, or it was changed");
        }

        var rack = head.TryGetProperty("rack", out var named) ? RecordReading.Of(named, JsonValueKind.String, "rack").GetString()! : "";
        var contents = new Contents(rack);
        Entry[] entries =
        [
            .. Each(head, "lifters", d => new Entry.LifterKept(Documents.Lifters.Read(d))),
            .. Each(head, "weighIns", d => new Entry.WeightKept(Weights.Read(d))),
            .. Each(head, "told", d => new Entry.FactTold(Documents.Told.Read(d))),
        ];
        contents.Writes = entries.Count(e => contents.Take(e) is not null);
        contents.Writes += Each(head, "sessions", Sessions.Read).Count(s => contents.Take(s) is not null);
        return contents;
    }

    private static IEnumerable<T> Each<T>(JsonElement head, string list, Func<BsonDocument, T> read) => head.TryGetProperty(list, out var items)
        ? RecordReading.Of(items, JsonValueKind.Array, list).EnumerateArray().Select(item => read(RecordReading.Document(item)))
        : throw new InvalidDataException($"the field \"{list}\" is missing");
}
