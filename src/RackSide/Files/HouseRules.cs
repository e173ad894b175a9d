using NodaTime;
using RackSide.Training.Kit;

namespace RackSide.Files;

/// <summary>The gym's settings, as its house-rules file has them.</summary>
/// <param name="Kit">What the gym owns.</param>
/// <param name="TrainingDays">The weekdays people train on, Monday first; no two neighbouring days. Empty where they roll.</param>
/// <param name="Sound">Whether the bell may ring.</param>
public sealed record HouseRules(GymKit Kit, IReadOnlyList<IsoDayOfWeek> TrainingDays, bool Sound)
{
    /// <summary>The gym's time zone; null takes the machine's.</summary>
    public DateTimeZone? Zone { get; init; }

    /// <summary>The seconds counted before a hold begins.</summary>
    public Duration LeadIn { get; init; } = Duration.FromSeconds(5);

    /// <summary>The time from the end of a hold to the key, taken off a hold that is stopped before its target.</summary>
    public Duration WalkToKey { get; init; } = Duration.FromSeconds(2);

    /// <summary>The weekday that a shown week begins with.</summary>
    public IsoDayOfWeek WeekStarts { get; init; } = IsoDayOfWeek.Monday;

    /// <summary>How many megabytes (of 1,000,000 bytes) the backups beside the logbook may take; 0 for no backups.</summary>
    public int BackupMegabytes { get; init; } = UsualBackupMegabytes;

    /// <summary>Twelve months of backups of a household's logbook, with room to spare.</summary>
    public const int UsualBackupMegabytes = 64;

    /// <summary>Whether training days roll, each so many rest days after the one before, whatever the weekday.</summary>
    public bool Rolls => TrainingDays.Count == 0;
}
