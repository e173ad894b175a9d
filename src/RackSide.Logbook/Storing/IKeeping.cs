using RackSide.Training.History;

namespace RackSide.Logbook.Storing;

/// <summary>Where whole documents are read from: the open log, or memory once the log has failed.</summary>
internal interface IKeeping
{
    /// <summary>Sessions by the numbers of their documents; null for all.</summary>
    IEnumerable<SessionRecord> SessionsOf(IReadOnlyCollection<long>? numbers);

    /// <summary>All body weights told outside sessions, each with the number of its document.</summary>
    IEnumerable<(long Number, KeptWeight Weight)> AllWeights();

    /// <summary>All facts told outside sessions, each with the number of its document.</summary>
    IEnumerable<(long Number, KeptFact Fact)> AllTold();
}
