using NodaTime;

namespace RackSide.Time;

/// <summary>The one place that names the system's clock and its time zone.</summary>
internal static class SystemTime
{
    /// <summary>Starts the clock that the program runs on.</summary>
    /// <param name="environment">Gives the value of a variable, or null; see docs/testing-hooks.md for the two read here.</param>
    /// <exception cref="Refusal">A test hook has a value that cannot be read.</exception>
    public static IClock Start(Func<string, string?> environment)
    {
        var hook = ClockHook.Read(environment, Zone());
#pragma warning disable RS0030 // This is the one place.
        var started = hook.Start ?? SystemClock.Instance.GetCurrentInstant();
#pragma warning restore RS0030
        return new SteadyClock(started, BootTime.Elapsed, hook.Speed);
    }

    /// <summary>The zone of this machine, or UTC where it has none that is known.</summary>
    public static DateTimeZone Zone()
    {
        try
        {
            return DateTimeZoneProviders.Tzdb.GetSystemDefault();
        }
        catch (NodaTime.TimeZones.DateTimeZoneNotFoundException)
        {
            return DateTimeZone.Utc;
        }
    }
}
