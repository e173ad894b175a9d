using LiteDB;
using LiteDB.Engine;
using RackSide.Logbook.Documents;
using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>Reads from the open log what is asked for, each document by its checksum.</summary>
/// <param name="engine">The log's engine.</param>
/// <param name="failed">Told of the first document that cannot be read; gives where to read from instead.</param>
internal sealed class LogReader(LiteEngine engine, Func<Exception, IKeeping> failed) : IKeeping
{
    // From so many on one pass over all of them is quicker than finding each.
    private const int Many = 200;

    /// <inheritdoc/>
    public IEnumerable<SessionRecord> SessionsOf(IReadOnlyCollection<long>? numbers) => Or(
        () => numbers is null ? engine.Find(Collections.Sessions, new Query()).Select(Session).ToList() : Some(numbers),
        elsewhere => elsewhere.SessionsOf(numbers));

    /// <inheritdoc/>
    public IEnumerable<(long Number, KeptWeight Weight)> AllWeights() => Or(
        () => engine.Find(Collections.Weights, new Query()).Select(d => (d.Long("_id"), Weights.Read(Checksums.Check(d)))).ToList(),
        elsewhere => elsewhere.AllWeights());

    /// <inheritdoc/>
    public IEnumerable<(long Number, KeptFact Fact)> AllTold() => Or(
        () => engine.Find(Collections.Told, new Query()).Select(d => (d.Long("_id"), Told.Read(Checksums.Check(d)))).ToList(),
        elsewhere => elsewhere.AllTold());

    private List<SessionRecord> Some(IReadOnlyCollection<long> numbers)
    {
        var wanted = numbers.ToHashSet();
        var asked = wanted.Count > Many
            ? new Query()
            : new Query { Where = { BsonExpression.Create("$._id IN @0", new BsonArray(wanted.Order().Select(n => new BsonValue(n)))) } };
        var found = engine.Find(Collections.Sessions, asked).Where(d => wanted.Contains(d.Long("_id"))).Select(Session).ToList();
        return found.Count == numbers.Count ? found : throw new InvalidDataException("documents are missing");
    }

    private static SessionRecord Session(BsonDocument document) => Sessions.Read(Checksums.Check(document));

    // Whatever the engine throws of a damaged page, the copy and the journal have it.
    private IEnumerable<T> Or<T>(Func<IEnumerable<T>> read, Func<IKeeping, IEnumerable<T>> elsewhere)
    {
        try
        {
            return read();
        }
        catch (Exception e)
        {
            return elsewhere(failed(e));
        }
    }
}
