using System.CommandLine;
using System.Text;
using NodaTime;
using NodaTime.Text;
using RackSide.Exchange;
using RackSide.Json;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary><c>rackside calendar</c>: the next four weeks, also as a file for other calendars.</summary>
internal sealed class CalendarCommand : PrintingCommand
{
    private const int MostMinutes = 1440;

    private readonly Option<string?> ics = new("--ics") { Description = "Write an iCalendar file; importing a later one updates the first.", HelpName = "FILE" };
    private readonly Option<string?> at = new("--at") { Description = "In the file: the hour that training begins; all day if not said.", HelpName = "18:30" };
    private readonly Option<string?> remind = new("--remind") { Description = "In the file: a reminder so many minutes before.", HelpName = "MINUTES" };

    /// <summary>The command.</summary>
    public CalendarCommand(RackSideCommand root, Surroundings around)
        : base("calendar", "The next four weeks: what was done, what comes, and why where it is out of turn.", root, around)
    {
        Options.Add(ics);
        Options.Add(at);
        Options.Add(remind);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var hour = parsed.GetValue(at) is { } text ? Hour(text) : (LocalTime?)null;
        var minutes = parsed.GetValue(remind) is { } before ? Minutes(before) : (int?)null;
        var file = parsed.GetValue(ics);
        if (file is null && (hour ?? (object?)minutes) is not null)
        {
            throw new Refusal(ExitCode.Usage, $"{(hour is null ? remind.Name : at.Name)} is for a file; add --ics FILE");
        }

        if (hour is null && minutes is not null)
        {
            throw new Refusal(ExitCode.Usage, "--remind needs the hour that training begins; add --at 18:30");
        }

        using var gym = Open(parsed);
        var lifter = Who(gym, parsed);
        TellNewcomer(lifter);
        var calendar = TrainingCalendar.For(gym.Plan, gym.Recent(lifter), gym.Today, gym.WeekStarts);
        if (file is not null)
        {
            Write(gym, lifter, file, hour, minutes);
        }

        return Print(parsed, CalendarText.Lines(calendar, lifter, gym.WeekStarts), () => CalendarJson.Of(lifter, calendar), JsonOutput.Shapes.CalendarJson);
    }

    private void Write(Gym gym, Lifter lifter, string file, LocalTime? hour, int? minutes)
    {
        var history = gym.Recent(lifter);
        var events = TrainingEvents.Of(gym.Plan, history, gym.Today);
        var times = new CalendarTimes(hour, gym.Zone, kind => Length(gym, lifter, history, kind), minutes);
        try
        {
            File.WriteAllText(file, CalendarFile.Of(lifter, events, times, gym.Clock.GetCurrentInstant()), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"--ics: {file} cannot be written: {trouble.Message}");
        }

        Around.Error.Print(PlainText.Wrap($"rackside: {file}: {events.Count(e => !e.Off)} training days written"));
    }

    // To the next five minutes, as people put such things into a calendar.
    private static int Length(Gym gym, Lifter lifter, TrainingHistory history, DayKind kind)
    {
        var day = gym.Plan.Days.First(d => d.Kind == kind);
        var asked = Planner.Prescriptions(day, gym.Catalogue, gym.Kit, lifter, history, gym.Today);
        return Math.Max(5, 5 * (int)Math.Ceiling(TimeEstimate.Of(asked, gym.Catalogue).TotalMinutes / 5));
    }

    private static LocalTime Hour(string text) =>
        LocalTimePattern.CreateWithInvariantCulture("H:mm").Parse(text.Trim().Replace('.', ':')) is { Success: true } read
            ? read.Value
            : throw new Refusal(ExitCode.Usage, $"--at: \"{text}\" is no hour of the day; write one such as 18:30");

    private static int Minutes(string text) =>
        int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var minutes) && minutes <= MostMinutes
            ? minutes
            : throw new Refusal(ExitCode.Usage, $"--remind: \"{text}\" is no number of minutes; write 0 to {MostMinutes}, such as 30");
}
