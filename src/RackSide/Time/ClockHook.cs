using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace RackSide.Time;

/// <summary>What the two test hooks say: when the clock starts and how fast it runs.</summary>
/// <param name="Start">When; null for now.</param>
/// <param name="Speed">How many times faster; 1 for as usual.</param>
internal sealed record ClockHook(Instant? Start, double Speed)
{
    private const string ClockName = "RACKSIDE_CLOCK";
    private const string SpeedName = "RACKSIDE_SPEED";
    private const double Fastest = 10_000;

    /// <summary>Reads the hooks.</summary>
    /// <exception cref="Refusal">A value cannot be read.</exception>
    public static ClockHook Read(Func<string, string?> environment, DateTimeZone zone) => new(
        environment(ClockName) is { Length: > 0 } clock ? ReadStart(clock, zone) : null,
        environment(SpeedName) is { Length: > 0 } speed ? ReadSpeed(speed) : 1);

    private static Instant ReadStart(string text, DateTimeZone zone) =>
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu'-'MM'-'dd'T'HH':'mm").Parse(text) is { Success: true } parsed
            ? parsed.Value.InZoneLeniently(zone).ToInstant()
            : throw new Refusal(ExitCode.Usage, $"{ClockName}: \"{text}\" is not a time; write one such as 2026-11-25T18:00");

    private static double ReadSpeed(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var speed) && speed is > 0 and <= Fastest
            ? speed
            : throw new Refusal(ExitCode.Usage, $"{SpeedName}: \"{text}\" is not a speed; write a number from 1 to {Fastest:0}");
}
