using RackSide.Pages;
using RackSide.Training.History;

namespace RackSide.Visits;

/// <summary>A session on the screen, or two on one bar: what those ask who see to it that nothing of it is lost.</summary>
internal interface ITrainingVisit : IConversation, IDisposable
{
    /// <summary>The facts that are not on disk, in their order.</summary>
    IReadOnlyList<(FactId Session, Fact Fact)> Unwritten { get; }

    /// <summary>Why the last try to write failed, in a few words; null where it did not.</summary>
    string? Trouble { get; }

    /// <summary>Whether all of it is over, so that nothing can be gone on with.</summary>
    bool IsClosed { get; }

    /// <summary>Waits until everything is on disk; false where it cannot be, or takes too long.</summary>
    bool WaitUntilWritten();

    /// <summary>Goes on with it after it was left.</summary>
    void GoOn();

    /// <summary>Tries no more to write: what is not on disk was given up, or is elsewhere.</summary>
    void GiveUp();
}
