using LiteDB;

namespace RackSide.Logbook.Documents;

/// <summary>
/// Strict reading of fields. The engine's own accessors turn a missing number into 0, which would let a damaged document
/// pass as a set of no reps.
/// </summary>
internal static class Fields
{
    /// <summary>An integer of 64 bits.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static long Long(this BsonDocument document, string name) =>
        document[name] is { IsInt64: true } value ? value.AsInt64 : throw Unfit(name);

    /// <summary>An integer of 32 bits.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static int Int(this BsonDocument document, string name) =>
        document[name] is { IsInt32: true } value ? value.AsInt32 : throw Unfit(name);

    /// <summary>A yes or no.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static bool Flag(this BsonDocument document, string name) =>
        document[name] is { IsBoolean: true } value ? value.AsBoolean : throw Unfit(name);

    /// <summary>A text.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static string Text(this BsonDocument document, string name) =>
        document[name] is { IsString: true } value ? value.AsString : throw Unfit(name);

    /// <summary>A whole number, or 0 where the field is missing, as in a document of an older version.</summary>
    /// <exception cref="InvalidDataException">It is something else.</exception>
    public static int IntOrZero(this BsonDocument document, string name) => document[name].IsNull ? 0 : document.Int(name);

    /// <summary>A text, or null where the field is null.</summary>
    /// <exception cref="InvalidDataException">It is something else.</exception>
    public static string? TextOrNull(this BsonDocument document, string name) =>
        document[name].IsNull ? null : document.Text(name);

    /// <summary>A document inside this one.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static BsonDocument Inner(this BsonDocument document, string name) =>
        document[name] is { IsDocument: true } value ? value.AsDocument : throw Unfit(name);

    /// <summary>A list of documents.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static IEnumerable<BsonDocument> Inners(this BsonDocument document, string name) =>
        document.List(name).Select(v => v.IsDocument ? v.AsDocument : throw Unfit(name));

    /// <summary>A list of integers.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static IEnumerable<int> Ints(this BsonDocument document, string name) =>
        document.List(name).Select(v => v.IsInt32 ? v.AsInt32 : throw Unfit(name));

    /// <summary>A list.</summary>
    /// <exception cref="InvalidDataException">It is missing or something else.</exception>
    public static BsonArray List(this BsonDocument document, string name) =>
        document[name] is { IsArray: true } value ? value.AsArray : throw Unfit(name);

    private static InvalidDataException Unfit(string name) => new($"the field '{name}' is missing or not what it should be");
}
