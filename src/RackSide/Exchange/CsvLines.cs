using CsvHelper;

namespace RackSide.Exchange;

/// <summary>
/// A table as RFC 4180 has it: fields parted by commas, lines ended by CR LF, a field with a comma, a quote or a line break
/// in quotes, a quote inside doubled (section 2). Tests read the result with python3.
/// </summary>
internal sealed class CsvLines
{
    // What a spreadsheet takes for a formula, and the mark that guards one, so that reading can take the guard off again.
    private const string Guarded = "=+-@\t\r'";

    private readonly StringWriter text = new();
    private readonly CsvWriter writer;
    private readonly int columns;

    /// <summary>A table with these columns.</summary>
    public CsvLines(params string[] header)
    {
        columns = header.Length;
        writer = CsvWriter.Create(text, new CsvWriterOptions { NewLine = "\r\n" }, leaveOpen: true);
        Add(header);
    }

    /// <summary>Adds a line. Text that people typed goes through <see cref="Guard"/> first.</summary>
    /// <exception cref="ArgumentException">There are more or fewer fields than columns.</exception>
    public void Add(params string[] fields)
    {
        if (fields.Length != columns)
        {
            throw new ArgumentException($"{fields.Length} fields for {columns} columns", nameof(fields));
        }

        foreach (var field in fields)
        {
            writer.WriteField(field.AsSpan());
        }

        writer.EndRecord();
    }

    /// <summary>The whole table.</summary>
    public override string ToString()
    {
        writer.Flush();
        return text.ToString();
    }

    /// <summary>Text that no spreadsheet takes for a formula: an apostrophe goes before what would begin one.</summary>
    public static string Guard(string text) => text.Length > 0 && Guarded.Contains(text[0], StringComparison.Ordinal) ? $"'{text}" : text;

    /// <summary>The text as it was before <see cref="Guard"/>.</summary>
    public static string Unguard(string text) => text is ['\'', var first, ..] && Guarded.Contains(first, StringComparison.Ordinal) ? text[1..] : text;
}
