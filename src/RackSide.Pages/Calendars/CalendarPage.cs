using System.Globalization;
using NodaTime;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Pages.Calendars;

/// <summary>
/// Four weeks, a row each: the dates, and under each date a word for what it is. Below stands the day looked at with why.
/// A page too small for that shows the day looked at and the training days that follow it.
/// </summary>
internal static class CalendarPage
{
    private const int DaysAWeek = 7, WordsLetters = 8, ShortLetters = 6;

    /// <summary>Draws it.</summary>
    /// <param name="size">The page's size.</param>
    /// <param name="calendar">The weeks.</param>
    /// <param name="chosen">The day looked at, from 0.</param>
    /// <param name="said">A passing sentence, or null.</param>
    public static Page Draw(PageSize size, TrainingCalendar calendar, int chosen, string? said)
    {
        var canvas = new Canvas(size);
        var days = calendar.Weeks.SelectMany(week => week).ToList();
        Frame.Header(canvas, "CALENDAR", $"today is {calendar.Today.Short()}");
        var (margin, room) = (size.Compact ? 0 : 1, Frame.Bottom(size) - Frame.Top(size));
        var grid = 1 + (2 * calendar.Weeks.Count);
        if (room >= grid + 1 && size.Columns >= DaysAWeek * (ShortLetters + 1))
        {
            var row = DrawGrid(canvas, calendar, chosen, margin, room - grid >= calendar.Weeks.Count + 3);
            DrawLines(canvas, Looked(days[chosen], calendar.Today), margin, row);
        }
        else
        {
            canvas.Cursor(margin, Frame.Top(size));
            DrawLines(canvas, [.. Looked(days[chosen], calendar.Today), .. days.Skip(chosen + 1).Where(d => d.Kind == DueKind.Train).Select(d => $"{d.Date.Short()}: {d.Day!.Name}")], margin, Frame.Top(size));
        }

        Frame.Keys(canvas, new KeyHint("+ -", "a day on, a day back", "day"), new KeyHint("Up Down", "a week", "week"), new KeyHint("/", "back"), new KeyHint("!", "stop signs"));
        if (said is not null)
        {
            canvas.Write(1, size.Rows - 3, $" {Frame.Fit(said, size.Columns - 4)} ", Look.Bold);
        }

        return canvas.Done();
    }

    private static int DrawGrid(Canvas canvas, TrainingCalendar calendar, int chosen, int margin, bool roomy)
    {
        var width = (canvas.Size.Columns - margin) / DaysAWeek;
        var row = Frame.Top(canvas.Size);
        for (var i = 0; i < DaysAWeek; i++)
        {
            canvas.Write(margin + (i * width) + 1, row, calendar.Weeks[0][i].Date.DayOfWeek.ToString()[..3]);
        }

        row++;
        foreach (var (week, w) in calendar.Weeks.Select((week, w) => (week, w)))
        {
            for (var i = 0; i < DaysAWeek; i++)
            {
                DrawDay(canvas, week[i], (w * DaysAWeek) + i == chosen, margin + (i * width), row, width);
            }

            row += roomy ? 3 : 2;
        }

        return row;
    }

    private static void DrawDay(Canvas canvas, DayAhead day, bool here, int column, int row, int width)
    {
        var look = here ? Look.Bold | Look.Now : day.Kind == DueKind.Train ? Look.Bold : Look.Plain;
        var date = day.Date.Day == 1 ? $"{day.Date.Short()[4..]}" : day.Date.Day.ToString(CultureInfo.InvariantCulture);
        canvas.Write(column, row, $"{(here ? '>' : ' ')}{date}", look);
        canvas.Write(column + 1, row + 1, Frame.Fit(Word(day, width > WordsLetters), width - 1), day.Kind == DueKind.Train ? Look.Bold : Look.Plain);
        if (here)
        {
            canvas.Cursor(column, row);
        }
    }

    private static string Word(DayAhead day, bool whole) => day.Kind switch
    {
        DueKind.Train => day.Day!.Kind == DayKind.Strength ? whole ? "strength" : "stren." : "skills",
        DueKind.DoneToday => "done",
        DueKind.Away => "away",
        _ => "-",
    };

    private static List<string> Looked(DayAhead day, LocalDate today)
    {
        var what = day.Kind switch
        {
            DueKind.Train => day.Day!.Name,
            DueKind.DoneToday => $"{day.Day?.Name ?? "training"}, done",
            DueKind.Away => "away",
            _ => "rest",
        };
        return [$"{day.Date.Short()}{(day.Date == today ? ", today" : "")}: {what}{(day.Kind == DueKind.DoneToday ? "" : $"; {day.Why}")}"];
    }

    private static void DrawLines(Canvas canvas, IReadOnlyList<string> lines, int margin, int row)
    {
        foreach (var line in lines.SelectMany(line => Frame.Wrap(line, canvas.Size.Columns - (2 * margin))).Take(Frame.Bottom(canvas.Size) - row))
        {
            canvas.Write(margin, row++, line);
        }
    }
}
