using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Exchange;

/// <summary>When the training days of a calendar file begin and what they are told with.</summary>
/// <param name="At">The hour in the gym; null makes them last the day.</param>
/// <param name="Zone">The gym's time zone.</param>
/// <param name="Minutes">About how long a training day of a kind takes.</param>
/// <param name="Remind">How many minutes before the beginning a reminder comes; null for none. Needs <paramref name="At"/>.</param>
internal sealed record CalendarTimes(LocalTime? At, DateTimeZone Zone, Func<DayKind, int> Minutes, int? Remind);

/// <summary>
/// A calendar file of RFC 5545. Times are in UTC, reckoned with the zone's rules of each date, so that no zone has to be
/// written down and a change to or from daylight saving moves no hour in the gym. A UID is the lifter and the number of
/// the training day; a later file has a higher SEQUENCE, so that a second import changes what is there and adds nothing.
/// </summary>
internal static class CalendarFile
{
    private static readonly InstantPattern Utc = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'");
    private static readonly LocalDatePattern Date = LocalDatePattern.CreateWithInvariantCulture("uuuuMMdd");

    // Seconds from here fit the integer of section 3.3.8 until 2094.
    private static readonly Instant FirstSequence = Instant.FromUtc(2026, 1, 1, 0, 0);

    /// <summary>The text of the file.</summary>
    /// <param name="lifter">Whose training it is.</param>
    /// <param name="events">The training days.</param>
    /// <param name="times">Their hours.</param>
    /// <param name="now">When it is written.</param>
    public static string Of(Lifter lifter, IReadOnlyList<TrainingEvent> events, CalendarTimes times, Instant now)
    {
        var lines = new CalendarLines()
            .Add("BEGIN", "VCALENDAR")
            .Add("VERSION", "2.0")
            .Add("PRODID", "-//RackSide//training days//EN")
            .Add("CALSCALE", "GREGORIAN")
            .Add("METHOD", "PUBLISH");
        foreach (var e in events)
        {
            Write(lines, lifter, e, times, now);
        }

        return lines.Add("END", "VCALENDAR").ToString();
    }

    /// <summary>The UID of a training day; two lifters of one name joined at different moments.</summary>
    public static string Uid(Lifter lifter, TrainingEvent e) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(e.Kind == DayKind.Strength ? "strength" : "skills")}-{e.Number}-of-{Plain(lifter.Key)}-{lifter.Joined.ToUnixTimeSeconds()}@rackside.invalid");

    private static void Write(CalendarLines lines, Lifter lifter, TrainingEvent e, CalendarTimes times, Instant now)
    {
        lines.Add("BEGIN", "VEVENT")
            .Add("UID", Uid(lifter, e))
            .Add("DTSTAMP", Utc.Format(now))
            .Add("SEQUENCE", Number(Math.Max(0, (long)Math.Floor((now - FirstSequence).TotalSeconds))));
        if (times.At is { } at)
        {
            lines.Add("DTSTART", Utc.Format(e.Date.At(at).InZoneLeniently(times.Zone).ToInstant()))
                .Add("DURATION", $"PT{Number(times.Minutes(e.Kind))}M");
        }
        else
        {
            lines.Add("DTSTART;VALUE=DATE", Date.Format(e.Date)).Add("DTEND;VALUE=DATE", Date.Format(e.Date.PlusDays(1)));
        }

        lines.AddText("SUMMARY", e.Name)
            .AddText("DESCRIPTION", e.Why)
            .Add("STATUS", e.Off ? "CANCELLED" : "CONFIRMED")
            .Add("TRANSP", times.At is null || e.Off ? "TRANSPARENT" : "OPAQUE");
        Remind(lines, e, times);
        lines.Add("END", "VEVENT");
    }

    private static void Remind(CalendarLines lines, TrainingEvent e, CalendarTimes times)
    {
        if (times is { At: not null, Remind: { } minutes } && !e.Off && e.Why != "done")
        {
            lines.Add("BEGIN", "VALARM")
                .Add("ACTION", "DISPLAY")
                .AddText("DESCRIPTION", e.Name)
                .Add("TRIGGER", $"-PT{Number(minutes)}M")
                .Add("END", "VALARM");
        }
    }

    private static string Plain(string key) => string.Concat(key.Where(c => char.IsAsciiLetterOrDigit(c) || c == '-'));

    private static string Number(long number) => number.ToString(CultureInfo.InvariantCulture);
}
