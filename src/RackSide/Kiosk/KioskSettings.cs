using System.Globalization;
using NodaTime;

namespace RackSide.Kiosk;

/// <summary>What the unit of a kiosk tells the program in variables; docs/kiosk.md lists them.</summary>
/// <param name="Idle">After so long without a key the names are shown again.</param>
/// <param name="Stick">Where a memory stick is found once it is plugged in; null where there is no such place.</param>
/// <param name="Release">The file whose writing asks for the stick to be given back; null where nobody would.</param>
internal sealed record KioskSettings(Duration Idle, string? Stick, string? Release)
{
    private const string IdleName = "RACKSIDE_IDLE";
    private const string StickName = "RACKSIDE_STICK";
    private const int UsualIdle = 15;
    private const int LongestIdle = 240;

    /// <summary>Reads the variables.</summary>
    /// <exception cref="Refusal">A value cannot be read.</exception>
    public static KioskSettings Read(Func<string, string?> environment) => new(
        Duration.FromMinutes(environment(IdleName) is { Length: > 0 } idle ? Minutes(idle) : UsualIdle),
        environment(StickName) is { Length: > 0 } stick ? stick : null,
        environment("RUNTIME_DIRECTORY") is { Length: > 0 } run ? Path.Combine(run, "stick-release") : null);

    private static int Minutes(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes) && minutes is > 0 and <= LongestIdle
            ? minutes
            : throw new Refusal(ExitCode.Config, $"{IdleName}: \"{text}\" is not 1 to {LongestIdle} minutes");
}
