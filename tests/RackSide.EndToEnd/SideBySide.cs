using RackSide.EndToEnd.Sessions;
using Xunit.Abstractions;

// Every test has a program, a terminal, a folder and a clock of its own, and mostly waits for them. More than this at once would
// make the keys of those that run faster than the clock too late.
[assembly: CollectionBehavior(MaxParallelThreads = 4)]
[assembly: TestCollectionOrderer("RackSide.EndToEnd.SideBySide", "RackSide.EndToEnd")]

namespace RackSide.EndToEnd;

/// <summary>The classes that take longest begin first, so that none is left over at the end to run alone.</summary>
public sealed class SideBySide : ITestCollectionOrderer
{
    private static readonly string[] Long =
        [nameof(SkillsDayTests), nameof(StrengthDayTests), nameof(StrengthDayKilledTests), nameof(TenTasksTests), nameof(HundredPushUpsTests), nameof(CheckInTests)];

    /// <inheritdoc/>
    public IEnumerable<ITestCollection> OrderTestCollections(IEnumerable<ITestCollection> testCollections) => testCollections.OrderBy(Place);

    private static int Place(ITestCollection collection) =>
        Array.FindIndex(Long, name => collection.DisplayName.EndsWith($".{name}", StringComparison.Ordinal)) is var place && place < 0 ? Long.Length : place;
}
