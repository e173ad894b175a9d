using NodaTime;
using RackSide.Files;
using RackSide.Training.Body;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Exchange;

/// <summary>A set as a table tells it.</summary>
internal sealed record SetRow(int Line, Lifter Lifter, LocalDate Date, Exercise Exercise, SetKind Kind, int? Number, Side? Side, int Done, Mass? Load, bool Slipped);

/// <summary>A body weight as a table tells it.</summary>
internal sealed record WeightRow(int Line, Lifter Lifter, LocalDate Date, Mass Weight);

/// <summary>Reads what the lines of a table mean. A line with a mistake is told and passed over, so that all are told at once.</summary>
internal sealed class TableRows(TableMap map, Catalogue catalogue, Func<string, Lifter?> lifterOf, Lifter? usual, LocalDate today, MistakeList mistakes)
{
    private const int MostReps = 1000, MostSeconds = 3600;
    private const decimal MostLoad = 1000;

    /// <summary>The sets.</summary>
    public IReadOnlyList<SetRow> Sets(IEnumerable<TableLine> lines) => [.. lines.Select(Set).OfType<SetRow>()];

    /// <summary>The body weights.</summary>
    public IReadOnlyList<WeightRow> Weights(IEnumerable<TableLine> lines) => [.. lines.Select(Weight).OfType<WeightRow>()];

    private SetRow? Set(TableLine line)
    {
        var before = mistakes.Count;
        var (lifter, date, exercise) = (Who(line), Date(line), Of(line));
        var (reps, seconds) = (Whole(line, "reps", MostReps), Whole(line, "seconds", MostSeconds));
        if (Text(line, "reps").Length > 0 == Text(line, "seconds").Length > 0)
        {
            Tell(line, map.Columns.ContainsKey("reps") ? "reps" : "seconds", reps is null ? "neither reps nor seconds stand here" : "both reps and seconds stand here", "write one of them");
        }

        var kind = Kind(line, seconds is not null);
        var number = Whole(line, "set", MostReps);
        var side = Side(line);
        var load = Mass(line, "load", (text, unit) => NumberEntry.Parse(text) is { } n && n <= MostLoad ? new Mass(n, unit) : null, "write a number of at most three decimals, such as 62.5");
        return mistakes.Count > before || lifter is null ? null
            : new SetRow(line.Line, lifter, date!.Value, exercise!, kind, number, side, reps ?? seconds!.Value, load, Text(line, "form") == map.Slipped);
    }

    private WeightRow? Weight(TableLine line)
    {
        var before = mistakes.Count;
        var (lifter, date) = (Who(line), Date(line));
        var weight = Mass(line, "weight", BodyWeightEntry.Read, "write a body weight such as 72.4");
        if (weight is null && mistakes.Count == before)
        {
            Tell(line, map.Columns.Keys.First(k => k.StartsWith("weight", StringComparison.Ordinal)), "no body weight stands here", "write one, or take the line out");
        }

        return mistakes.Count > before || lifter is null ? null : new WeightRow(line.Line, lifter, date!.Value, weight!.Value);
    }

    private Lifter? Who(TableLine line)
    {
        if (!map.Columns.ContainsKey("lifter"))
        {
            return usual;
        }

        var found = lifterOf(Text(line, "lifter"));
        if (found is null)
        {
            Tell(line, "lifter", $"nobody here is called \"{Text(line, "lifter")}\"", "let them join first, or take the column out of the map and say --lifter");
        }

        return found;
    }

    private LocalDate? Date(TableLine line)
    {
        var text = Text(line, "date");
        var parts = text.Split('T', ' ')[0].Split('-', '.', '/');
        var numbers = parts.Select(p => YamlValues.ParseWhole(p)).OfType<int>().ToList();
        var date = parts.Length == 3 && numbers.Count == 3 ? At(numbers) : null;
        if (date is null)
        {
            Tell(line, "date", $"\"{text}\" is not a date", map.Dates switch
            {
                DateOrder.DayMonthYear => "write one such as 25.11.2026",
                DateOrder.MonthDayYear => "write one such as 11/25/2026",
                _ => "write one such as 2026-11-25, or say dates: day_month_year in the map",
            });
        }
        else if (date > today)
        {
            Tell(line, "date", $"{date.Value.Shown()} is yet to come", "write a day that has been");
        }

        return date;
    }

    private LocalDate? At(List<int> n)
    {
        var (year, month, day) = map.Dates switch { DateOrder.DayMonthYear => (n[2], n[1], n[0]), DateOrder.MonthDayYear => (n[2], n[0], n[1]), _ => (n[0], n[1], n[2]) };
        return year is >= 1970 and <= 2199 && month is >= 1 and <= 12 && day >= 1 && day <= CalendarSystem.Iso.GetDaysInMonth(year, month) ? new LocalDate(year, month, day) : null;
    }

    private Exercise? Of(TableLine line)
    {
        var name = Text(line, "exercise");
        var exercise = catalogue.Find(map.Exercises.GetValueOrDefault(name, name));
        if (exercise is null)
        {
            Tell(line, "exercise", $"the map does not say which exercise \"{name}\" is", "write it under exercises, such as Back squat: back-squat");
        }

        return exercise;
    }

    private SetKind Kind(TableLine line, bool timed)
    {
        var word = Text(line, "kind");
        if (word.Length == 0)
        {
            return timed ? SetKind.Hold : SetKind.Working;
        }

        if (map.Kinds.TryGetValue(word, out var kind))
        {
            return kind;
        }

        var own = Enum.GetValues<SetKind>().Where(k => SetWords.Of(k) == word).Cast<SetKind?>().FirstOrDefault();
        if (own is null)
        {
            Tell(line, "kind", $"the map does not say what \"{word}\" is", "write it under kinds: working, warm-up, hold, share or held-share");
        }

        return own ?? SetKind.Working;
    }

    private Side? Side(TableLine line)
    {
        var word = Text(line, "side");
        if (word is not ("" or "left" or "right"))
        {
            Tell(line, "side", $"\"{word}\" is no side", "write left, right or nothing");
        }

        return word switch { "left" => Training.History.Side.Left, "right" => Training.History.Side.Right, _ => null };
    }

    private int? Whole(TableLine line, string column, int most)
    {
        var text = Text(line, column);
        var number = YamlValues.ParseWhole(text);
        if (text.Length > 0 && (number is null || number > most))
        {
            Tell(line, column, $"\"{text}\" is not a whole number from 0 to {most}", "write one such as 5");
        }

        return number;
    }

    // One column for each unit, or one for the number and one for the unit.
    private Mass? Mass(TableLine line, string name, Func<string, MassUnit, Mass?> read, string right)
    {
        var told = new[] { (Column: name, Unit: (MassUnit?)null), (name + "_kg", MassUnit.Kilogram), (name + "_lb", MassUnit.Pound) }
            .Where(c => Text(line, c.Column).Length > 0).ToList();
        if (told.Count == 0)
        {
            return null;
        }

        var (column, unit) = told[0];
        unit ??= MassUnits.Parse(Text(line, "unit"));
        var mass = unit is { } known ? read(Text(line, column), known) : null;
        if (told.Count > 1)
        {
            Tell(line, told[1].Column, "the same stands in another unit too", "write one of them");
        }
        else if (unit is null)
        {
            Tell(line, "unit", $"\"{Text(line, "unit")}\" is no unit of mass", "write kg or lb");
        }
        else if (mass is null)
        {
            Tell(line, column, $"\"{Text(line, column)}\" cannot be read", right);
        }

        return mass;
    }

    private string Text(TableLine line, string column) =>
        map.Columns.TryGetValue(column, out var name) ? line.Fields.GetValueOrDefault(name, "").Trim() : "";

    private void Tell(TableLine line, string column, string wrong, string right) =>
        mistakes.Add(line.Line, map.Columns.GetValueOrDefault(column, column), wrong, right);
}
