using System.Diagnostics;
using System.Runtime.InteropServices;
using NodaTime;

namespace RackSide.Time;

/// <summary>
/// Time since the machine started, sleep included: <c>CLOCK_BOOTTIME</c> of clock_gettime(2). The stopwatch of the runtime
/// stands still while a Linux machine sleeps; elsewhere it has to do.
/// </summary>
internal static partial class BootTime
{
    private const int ClockBootTime = 7;

    /// <summary>The time elapsed.</summary>
    public static Duration Elapsed() =>
        OperatingSystem.IsLinux() && GetTime(ClockBootTime, out var time) == 0
            ? Duration.FromSeconds((long)time.Seconds) + Duration.FromNanoseconds((long)time.Nanoseconds)
            : Duration.FromTimeSpan(Stopwatch.GetElapsedTime(0));

    [LibraryImport("libc", EntryPoint = "clock_gettime")]
    private static partial int GetTime(int clock, out TimeSpec time);

    [StructLayout(LayoutKind.Sequential)]
    private struct TimeSpec
    {
        public nint Seconds;
        public nint Nanoseconds;
    }
}
