using NodaTime;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>
/// The alarm that is seen: the bar with the state word goes over the whole width. It says what the bell says, so that
/// nobody needs the bell. At the end of a rest it changes once a second for three seconds and then stands until the late
/// bell; that is half a cycle a second, far below the three flashes a second of WCAG 2.2, 2.3.1.
/// </summary>
internal static class Alarms
{
    private static readonly Duration Flashes = Duration.FromSeconds(3);

    /// <summary>Whether the bar goes over the whole width, some time after a rest has ended by itself.</summary>
    public static bool IsSeen(RestClock? rested, Instant now, bool steady) =>
        rested is { Ends: { } ended } && now - ended is var past && past >= Duration.Zero && past < RestClock.LateBell
        && (steady || past >= Flashes || (int)past.TotalSeconds % 2 == 0);

    /// <summary>Lays the bar over a row, and gives the look of what is written on it.</summary>
    public static Look Bar(Canvas canvas, int row, bool whole, Look usual)
    {
        if (!whole)
        {
            return usual;
        }

        canvas.Fill(0, row, canvas.Size.Columns, ' ', Look.Reverse);
        return Look.Bold | Look.Reverse;
    }
}
