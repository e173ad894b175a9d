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

    private const int Neighbours = 5;

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
        var found = (wanted.Count > Many ? [(1, long.MaxValue)] : Runs([.. numbers.Order()]))
            .SelectMany(run => engine.Find(Collections.Sessions, new Query
            {
                Where = { BsonExpression.Create("$._id BETWEEN @0 AND @1", run.First, run.Last) },
            }))
            .Where(d => wanted.Contains(d.Long("_id")))
            .Select(Session)
            .ToList();
        return found.Count == numbers.Count ? found : throw new InvalidDataException("documents are missing");
    }

    private static SessionRecord Session(BsonDocument document) => Sessions.Read(Checksums.Check(document));

    // A query for each run of neighbours: the engine's IN compares every document with every number, and a query for each
    // number costs several times what reading its document does.
    private static IEnumerable<(long First, long Last)> Runs(IReadOnlyList<long> numbers)
    {
        for (var (from, i) = (0, 1); i <= numbers.Count; i++)
        {
            if (i == numbers.Count || numbers[i] - numbers[i - 1] > Neighbours)
            {
                yield return (numbers[from], numbers[i - 1]);
                from = i;
            }
        }
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
