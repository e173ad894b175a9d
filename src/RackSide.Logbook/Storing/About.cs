using LiteDB;
using RackSide.Logbook.Documents;

namespace RackSide.Logbook.Storing;

/// <summary>
/// The log's word on itself, written again with every write. Its counts show a document that has gone missing without
/// an error; its number of writes says where the journal takes over.
/// </summary>
/// <param name="Rack">This rack's short random name.</param>
/// <param name="Writes">How many writes the log has taken in its life.</param>
/// <param name="Lifters">How many lifters it holds.</param>
/// <param name="Sessions">How many sessions.</param>
/// <param name="Facts">How many facts in all sessions.</param>
/// <param name="Weights">How many body weights told outside a session.</param>
/// <param name="Told">How many facts told outside a session.</param>
internal sealed record About(string Rack, long Writes, int Lifters, int Sessions, int Facts, int Weights, int Told)
{
    /// <summary>The version of the documents this code writes. Version 1 knew no facts told outside a session, version 2 no days and no bodies told, version 3 no other racks, version 4 no packed sessions.</summary>
    public const int Format = 5;

    /// <summary>Whether the file of house rules lies in it, as it does in backups; told, so that one that vanished is noticed.</summary>
    public bool HasRules { get; init; }

    /// <summary>The document for it.</summary>
    public BsonDocument ToDocument()
    {
        var document = Counts();
        if (HasRules)
        {
            document["has-rules"] = true;
        }

        return document;
    }

    private BsonDocument Counts() => new()
    {
        ["_id"] = 1L,
        ["format"] = Format,
        ["rack"] = Rack,
        ["writes"] = Writes,
        ["lifters"] = Lifters,
        ["sessions"] = Sessions,
        ["facts"] = Facts,
        ["weights"] = Weights,
        ["told"] = Told,
    };

    /// <summary>What a document says.</summary>
    /// <exception cref="NewerFormatException">A newer version wrote it.</exception>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static About Read(BsonDocument document) => document.Int("format") is > Format and var newer
        ? throw new NewerFormatException(newer)
        : new About(
            document.Text("rack"),
            document.Long("writes"),
            document.Int("lifters"),
            document.Int("sessions"),
            document.Int("facts"),
            document.Int("weights"),
            document.Int("format") == 1 ? 0 : document.Int("told"))
        {
            HasRules = document.ContainsKey("has-rules") && document.Flag("has-rules"),
        };
}

/// <summary>A file of a later version, which must be left as it is.</summary>
internal sealed class NewerFormatException(int format) : Exception
{
    /// <summary>The file's version.</summary>
    public int Version { get; } = format;
}
