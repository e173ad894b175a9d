using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Safety;

namespace RackSide.Training.Sessions;

/// <summary>What a session is held against and never changes: the plan's day, the gym, who trains, what came before.</summary>
public sealed record SessionSetting
{
    /// <summary>The training day as planned.</summary>
    public required TrainingDay Day { get; init; }

    /// <summary>All exercises.</summary>
    public required Catalogue Catalogue { get; init; }

    /// <summary>What the gym can load.</summary>
    public required KitLoads Loads { get; init; }

    /// <summary>What the gym owns.</summary>
    public GymKit Kit => Loads.Kit;

    /// <summary>Who trains.</summary>
    public required Lifter Lifter { get; init; }

    /// <summary>The sessions before this one.</summary>
    public required TrainingHistory Before { get; init; }

    /// <summary>The lifter's body weights before, oldest first; a weight unlike them is asked back.</summary>
    public IReadOnlyList<WeighIn> WeighIns { get; init; } = [];

    /// <summary>How long the lifter takes over a set, for the time that is left.</summary>
    public LifterPace Pace { get; init; } = LifterPace.Usual;

    /// <summary>The do-confirm items.</summary>
    public IReadOnlyList<CheckItem> Checks { get; init; } = [];

    /// <summary>The seconds counted before a hold begins, to get into place.</summary>
    public Duration LeadIn { get; init; } = Duration.FromSeconds(5);

    /// <summary>Taken off a hold that ENTER stops before its target: the time to reach the key.</summary>
    public Duration Reach { get; init; } = Duration.FromSeconds(2);
}
