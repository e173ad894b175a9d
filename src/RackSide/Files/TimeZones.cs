using NodaTime;

namespace RackSide.Files;

/// <summary>Time zones by their names in the tz database, as people type them.</summary>
internal static class TimeZones
{
    /// <summary>The zone of that name, in capitals or not; null where there is none.</summary>
    public static DateTimeZone? Find(string name) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(Named(name) ?? "");

    /// <summary>The name that was probably meant; null where none is near.</summary>
    public static string? Meant(string name) =>
        Nearest.To(name, DateTimeZoneProviders.Tzdb.Ids.Select(id => id.ToLowerInvariant())) is { } near ? Named(near) : null;

    private static string? Named(string name) => DateTimeZoneProviders.Tzdb.Ids
        .FirstOrDefault(id => string.Equals(id, name.Trim().Replace(' ', '_'), StringComparison.OrdinalIgnoreCase));
}
