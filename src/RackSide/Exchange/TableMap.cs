using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;

namespace RackSide.Exchange;

/// <summary>How the parts of a date stand in a table.</summary>
internal enum DateOrder
{
    /// <summary>2026-11-25.</summary>
    YearMonthDay,

    /// <summary>25.11.2026.</summary>
    DayMonthYear,

    /// <summary>11/25/2026.</summary>
    MonthDayYear,
}

/// <summary>What a person says of a table, so that it can be read: docs/import.md shows the file.</summary>
internal sealed record TableMap
{
    /// <summary>Whether it holds body weights; else sets.</summary>
    public required bool WeighIns { get; init; }

    /// <summary>What parts the fields; null where that is found out.</summary>
    public char? Separator { get; init; }

    /// <summary>How dates are written.</summary>
    public DateOrder Dates { get; init; }

    /// <summary>The table's column for each of ours.</summary>
    public required IReadOnlyDictionary<string, string> Columns { get; init; }

    /// <summary>What a set was for, by the table's word.</summary>
    public IReadOnlyDictionary<string, SetKind> Kinds { get; init; } = new Dictionary<string, SetKind>();

    /// <summary>The table's word for form that slipped.</summary>
    public string Slipped { get; init; } = SetWords.Slipped;

    /// <summary>Ids of our exercises, by the table's name.</summary>
    public IReadOnlyDictionary<string, string> Exercises { get; init; } = new Dictionary<string, string>();
}

/// <summary>Reads the file that says how a table is to be read.</summary>
internal sealed class TableMapReader(Catalogue catalogue, MistakeList mistakes)
{
    private static readonly string[] SetColumns = ["lifter", "date", "exercise", "kind", "set", "side", "reps", "seconds", "load", "unit", "load_kg", "load_lb", "form"];
    private static readonly string[] WeightColumns = ["lifter", "date", "weight", "unit", "weight_kg", "weight_lb"];

    private static readonly Form<bool> Table = WordForm.Of("a kind of table", ("sets", false), ("weigh_ins", true));
    private static readonly Form<char> Mark = WordForm.Of("a separator", ("comma", ','), ("semicolon", ';'), ("tab", '\t'));
    private static readonly Form<DateOrder> Order = WordForm.Of(
        "an order of year, month and day", ("year_month_day", DateOrder.YearMonthDay), ("day_month_year", DateOrder.DayMonthYear), ("month_day_year", DateOrder.MonthDayYear));

    private static readonly Form<SetKind> Kind = WordForm.Of("what a set is for", [.. Enum.GetValues<SetKind>().Select(k => (SetWords.Of(k), k))]);

    /// <summary>Reads the file; one that cannot be read is a mistake too.</summary>
    public static Reading<TableMap> ReadFrom(string path, Catalogue catalogue) => TextFile.Read(path, text => Read(text, path, catalogue));

    /// <summary>Reads its text.</summary>
    public static Reading<TableMap> Read(string text, string fileName, Catalogue catalogue)
    {
        var mistakes = new MistakeList(fileName);
        var fields = FileFields.Of(text, "table and columns, as docs/import.md shows", mistakes);
        return mistakes.Close(fields is null ? null : new TableMapReader(catalogue, mistakes).Of(fields));
    }

    private TableMap Of(Fields fields)
    {
        var weighIns = fields.Required("table", Table) ?? false;
        var map = new TableMap
        {
            WeighIns = weighIns,
            Separator = fields.Optional("separator", Mark),
            Dates = fields.Optional("dates", Order) ?? DateOrder.YearMonthDay,
            Columns = Columns(fields, weighIns ? WeightColumns : SetColumns, weighIns ? [["date"], ["weight", "weight_kg", "weight_lb"]] : [["date"], ["exercise"], ["reps", "seconds"]]),
            Kinds = Words(fields, "kinds").Select(w => (w.Name, Kind: Kind.Read(w.Value, w.Name, mistakes))).Where(k => k.Kind is not null).ToDictionary(k => k.Name, k => k.Kind!.Value),
            Slipped = fields.OptionalText("slipped", "write the table's word for form that slipped") ?? SetWords.Slipped,
            Exercises = Words(fields, "exercises").Where(Known).ToDictionary(w => w.Name, w => w.Value.Text),
        };
        fields.TellUnknown();
        return map;
    }

    private Dictionary<string, string> Columns(Fields fields, string[] known, string[][] needed)
    {
        var line = fields.LineOf("columns");
        var columns = new Dictionary<string, string>();
        if (fields.RequiredMap("columns", "write our name and the table's for each column, such as date: Day") is not { } map)
        {
            return columns;
        }

        var inner = new Fields(map, mistakes);
        foreach (var name in known)
        {
            if (inner.OptionalText(name, "write the name of a column of the table") is { } column)
            {
                columns[name] = column;
            }
        }

        inner.TellUnknown();
        foreach (var any in needed.Where(any => !any.Any(columns.ContainsKey)))
        {
            mistakes.Add(line, "columns", $"{WordForm.OneOf(any)} is missing", "write which column of the table holds it");
        }

        foreach (var amount in new[] { "load", "weight" }.Where(a => columns.ContainsKey(a) && !columns.ContainsKey("unit")))
        {
            mistakes.Add(line, "columns", $"{amount} has no unit", $"write {amount}_kg or {amount}_lb in its place, or which column holds the unit");
        }

        return columns;
    }

    private IEnumerable<(string Name, YamlScalar Value)> Words(Fields fields, string name)
    {
        foreach (var field in fields.OptionalMap(name, "write the table's word, a colon and ours on each line")?.Fields ?? [])
        {
            if (field.Value is YamlScalar { Text.Length: > 0 } word)
            {
                yield return (field.Name, word);
            }
            else
            {
                mistakes.Add(field.Line, field.Name, "no word of ours stands here", "write one after the colon");
            }
        }
    }

    private bool Known((string Name, YamlScalar Value) word)
    {
        var known = catalogue.Find(word.Value.Text) is not null;
        if (!known)
        {
            var near = Nearest.To(word.Value.Text, catalogue.All.Select(e => e.Id));
            mistakes.Add(word.Value.Line, word.Name, $"no exercise has the id \"{word.Value.Text}\"", near is null ? "write one of the exercise list, such as back-squat" : $"did you mean {near}?");
        }

        return known;
    }
}
