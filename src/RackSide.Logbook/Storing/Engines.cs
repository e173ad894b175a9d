using System.Runtime.InteropServices;
using LiteDB;
using LiteDB.Engine;
using RackSide.Logbook.Documents;
using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>What the logbook asks of the engine. Everything goes in and out as documents; nothing is mapped by reflection.</summary>
internal static class Engines
{
    /// <summary>Pages the write-ahead log may hold before they go to the log: small, so that a full disk is met late.</summary>
    private const int CheckpointPages = 50;

    /// <summary>An engine over two streams. Its order of texts is by code point, whatever the machine's culture data say.</summary>
    public static LiteEngine Open(Stream data, Stream writeAhead) => new(new EngineSettings
    {
        DataStream = data,
        LogStream = writeAhead,
        Collation = Collation.Binary,
    });

    /// <summary>The bytes of a new log that holds all this. Made of documents, so that no fault of an old file comes with them.</summary>
    public static byte[] Image(Contents contents)
    {
        using var data = new MemoryStream();
        using (var engine = Open(data, new MemoryStream()))
        {
            engine.Pragma("CHECKPOINT", CheckpointPages);
            engine.EnsureIndex(Collections.Sessions, "date", "$.date", unique: false);
            engine.Write(contents.Documents, contents.About with { HasRules = contents.HouseRules is not null });
        }

        return data.ToArray();
    }

    /// <summary>
    /// Keeps an engine that failed in memory until the process ends. Its transactions have a finalizer, which throws after
    /// some failures and would end the process; what is still referred to is not finalized.
    /// </summary>
    public static void Forsake(LiteEngine? engine) => _ = GCHandle.Alloc(engine);

    /// <summary>Writes documents and the log's word on itself in one transaction.</summary>
    public static void Write(this LiteEngine engine, IEnumerable<Stored> documents, About about)
    {
        engine.BeginTrans();
        foreach (var (collection, document) in documents.Append(new Stored(Collections.About, about.ToDocument())))
        {
            engine.Upsert(collection, [Checksums.Seal(document)], BsonAutoId.Int64);
        }

        engine.Commit();
    }

    /// <summary>Reads and verifies everything: each checksum, the counts, the index against the scan.</summary>
    /// <exception cref="InvalidDataException">Something does not hold. A damaged file may make the engine throw others.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote it.</exception>
    public static Contents ReadAll(this LiteEngine engine)
    {
        var told = ReadAbout(engine);
        var contents = new Contents(told.Rack) { Writes = told.Writes };
        foreach (var collection in Collections.Kept)
        {
            foreach (var document in engine.Find(collection, new Query()))
            {
                contents.Restore(collection, Checksums.Check(document));
            }
        }

        contents.HouseRules = engine.Find(Collections.HouseRules, new Query()).Select(d => RulesFile.Read(Checksums.Check(d))).FirstOrDefault();
        var indexed = engine.Find(Collections.Sessions, new Query { Select = "$._id", Where = { "$.date > 0" } }).Count();
        return contents.About == told with { HasRules = false } && (!told.HasRules || contents.HouseRules is not null) && contents.Share.IsWhole
            && indexed == told.Sessions
            ? contents
            : throw new InvalidDataException("documents are missing");
    }

    private static About ReadAbout(LiteEngine engine) => engine.Find(Collections.About, new Query()).ToList() is [var one]
        ? About.Read(Checksums.Check(one))
        : throw new InvalidDataException("this is not a RackSide logbook");

    /// <summary>The log's word on itself, its lifters and its register, with nothing else read; null where no register of now is there.</summary>
    /// <exception cref="InvalidDataException">Something does not hold.</exception>
    public static (About About, List<(long Number, Lifter Lifter)> Lifters, RackShare Share, RegisterState State)? ReadRegister(this LiteEngine engine)
    {
        var about = ReadAbout(engine);
        return engine.Find(Collections.Register, new Query()).ToList() is [var kept] && Registers.Read(Checksums.Check(kept), about.Writes) is { } state
            && state.Rows.Count == about.Sessions
                ? (about, [.. engine.Find(Collections.Lifters, new Query()).Select(d => (d.Long("_id"), Lifters.Read(Checksums.Check(d))))], engine.ReadShare(), state)
                : null;
    }

    private static RackShare ReadShare(this LiteEngine engine)
    {
        var share = new RackShare();
        foreach (var document in engine.Find(Collections.Racks, new Query()))
        {
            share.Restore(Checksums.Check(document));
        }

        return share.IsWhole ? share : throw new InvalidDataException("documents are missing");
    }

    /// <summary>Documents of a collection.</summary>
    /// <remarks>One at a time: as documents ten years take many times the room they take as sessions.</remarks>
    public static IEnumerable<BsonDocument> Find(this LiteEngine engine, string collection, Query query)
    {
        using var reader = engine.Query(collection, query);
        while (reader.Read())
        {
            yield return reader.Current.AsDocument;
        }
    }
}
