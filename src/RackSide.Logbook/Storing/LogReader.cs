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
    /// <inheritdoc/>
    public IEnumerable<SessionRecord> SessionsOf(IReadOnlyCollection<long>? numbers) => Or(
        () => (numbers is null ? engine.Find(Collections.Sessions, new Query()) : Some(numbers))
            .Select(d => Sessions.Read(Checksums.Check(d))).ToList(),
        elsewhere => elsewhere.SessionsOf(numbers));

    /// <inheritdoc/>
    public IEnumerable<(long Number, KeptWeight Weight)> AllWeights() => Or(
        () => engine.Find(Collections.Weights, new Query()).Select(d => (d.Long("_id"), Weights.Read(Checksums.Check(d)))).ToList(),
        elsewhere => elsewhere.AllWeights());

    /// <inheritdoc/>
    public IEnumerable<(long Number, KeptFact Fact)> AllTold() => Or(
        () => engine.Find(Collections.Told, new Query()).Select(d => (d.Long("_id"), Told.Read(Checksums.Check(d)))).ToList(),
        elsewhere => elsewhere.AllTold());

    private List<BsonDocument> Some(IReadOnlyCollection<long> numbers)
    {
        var found = engine.Find(Collections.Sessions, new Query
        {
            Where = { BsonExpression.Create("$._id IN @0", new BsonArray(numbers.Select(n => new BsonValue(n)))) },
        });
        return found.Count == numbers.Count ? found : throw new InvalidDataException("documents are missing");
    }

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
