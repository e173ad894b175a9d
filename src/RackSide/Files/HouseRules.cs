using NodaTime;
using RackSide.Training.Kit;

namespace RackSide.Files;

/// <summary>The gym's settings, as its house-rules file has them.</summary>
/// <param name="Kit">What the gym owns.</param>
/// <param name="TrainingDays">The weekdays people train on, Monday first; no two neighbouring days.</param>
/// <param name="Sound">Whether the bell may ring.</param>
public sealed record HouseRules(GymKit Kit, IReadOnlyList<IsoDayOfWeek> TrainingDays, bool Sound);
