using NodaTime;

namespace RackSide.Logbook;

/// <summary>How much a logbook holds.</summary>
/// <param name="Lifters">People.</param>
/// <param name="Sessions">Sessions, open ones among them.</param>
/// <param name="Sets">Sets that stand.</param>
/// <param name="WeighIns">Body weights, one a date.</param>
/// <param name="Told">What was told outside sessions, and taken back there.</param>
/// <param name="Newest">The date of the newest session; null where there is none.</param>
public sealed record LogbookCounts(int Lifters, int Sessions, int Sets, int WeighIns, int Told, LocalDate? Newest);
