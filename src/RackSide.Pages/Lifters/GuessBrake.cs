using NodaTime;

namespace RackSide.Pages.Lifters;

/// <summary>
/// Slows the guessing of a PIN: three misses are free, then each costs a wait that doubles, up to ten minutes. A right PIN
/// lets go of it. All 10 000 would take about ten weeks at the rack. Common practice, no source.
/// </summary>
/// <param name="Misses">How often in a row a PIN was wrong.</param>
/// <param name="Until">When the next one is taken.</param>
public readonly record struct GuessBrake(int Misses, Instant Until)
{
    private const int Free = 3;
    private static readonly Duration First = Duration.FromSeconds(10);
    private static readonly Duration Longest = Duration.FromMinutes(10);

    /// <summary>After one more wrong PIN.</summary>
    public GuessBrake Missed(Instant now) => new(Misses + 1, now + Wait(Misses + 1));

    /// <summary>How long no PIN is taken; zero where one is.</summary>
    public Duration Left(Instant now) => Duration.Max(Duration.Zero, Until - now);

    private static Duration Wait(int misses) => misses < Free ? Duration.Zero
        : Duration.Min(Longest, First * (1L << Math.Min(misses - Free, 10)));
}
