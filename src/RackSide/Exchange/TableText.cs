using CsvHelper;
using RackSide.Files;

namespace RackSide.Exchange;

/// <summary>One line of a table.</summary>
/// <param name="Line">Where it begins, from 1.</param>
/// <param name="Fields">What it holds, by the name of the column.</param>
internal sealed record TableLine(int Line, IReadOnlyDictionary<string, string> Fields);

/// <summary>A table of RFC 4180 as text, by the names of its columns.</summary>
internal static class TableText
{
    /// <summary>The lines; where the table cannot be read, or lacks a column, mistakes say why.</summary>
    /// <param name="text">The table.</param>
    /// <param name="separator">What parts the fields; null to find that out.</param>
    /// <param name="wanted">The columns that are asked for.</param>
    /// <param name="mistakes">Where mistakes go.</param>
    public static IReadOnlyList<TableLine> Read(string text, char? separator, IEnumerable<string> wanted, MistakeList mistakes)
    {
        var rows = Rows(text, separator, mistakes);
        if (rows.Count == 0 && !mistakes.Any)
        {
            mistakes.Add(0, "", "the table is empty", "write the names of the columns on its first line");
        }

        if (mistakes.Any)
        {
            return [];
        }

        var header = rows[0].Fields.Select(f => CsvLines.Unguard(f.Trim())).ToList();
        foreach (var missing in wanted.Where(w => !header.Contains(w)).Distinct())
        {
            var near = Nearest.To(missing, header);
            mistakes.Add(rows[0].Line, missing, "the table has no such column", near is null ? $"its columns are {string.Join(", ", header)}" : $"did you mean {near}?");
        }

        foreach (var twice in header.Where(wanted.Contains).GroupBy(h => h).Where(h => h.Count() > 1))
        {
            mistakes.Add(rows[0].Line, twice.Key, "two columns have this name", "rename one of them");
        }

        return mistakes.Any ? [] : [.. rows.Skip(1).Where(r => r.Fields.Any(f => f.Length > 0)).Select(r => Line(header, r, mistakes))];
    }

    private static TableLine Line(List<string> header, (int Line, string[] Fields) row, MistakeList mistakes)
    {
        if (row.Fields.Length != header.Count)
        {
            mistakes.Add(row.Line, "", $"{row.Fields.Length} fields stand here, and the first line has {header.Count}", "put text with a separator in it in quotes");
        }

        return new(row.Line, header.Zip(row.Fields).GroupBy(p => p.First).ToDictionary(p => p.Key, p => CsvLines.Unguard(p.First().Second)));
    }

    private static List<(int Line, string[] Fields)> Rows(string text, char? separator, MistakeList mistakes)
    {
        List<(int, string[])> rows = [];
        using var reader = CsvReader.Create(
            new StringReader(text),
            new CsvReaderOptions { HasHeader = false, Separator = separator, TrackLineNumbers = true, MalformedData = CsvMalformedDataHandling.Throw },
            leaveOpen: false);
        try
        {
            while (reader.Read())
            {
                rows.Add(((int)reader.LineNumber, [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]));
            }
        }
        catch (CsvFormatException odd)
        {
            mistakes.Add((int)odd.LineNumber, "", "a quote is out of place", "close it where the field ends, and double one that belongs to the text");
        }

        return rows;
    }
}
