using System.Globalization;
using System.Text;
using RackSide.Pages;
using RackSide.Pages.Settings;
using Terminal.Gui.Drivers;

namespace RackSide.Screens;

/// <summary>
/// Brings the driver's cells to a page and says what to send for it: only the cells that differ, in one string.
/// </summary>
/// <remarks>
/// The driver's own writer sends a cursor move for every unchanged cell of a row that changed, and colour codes whether
/// wanted or not; a countdown on it costs a kilobyte a second. So the cells are kept in the driver's contents, as it
/// expects, and marked as sent. The comparison is with those contents and not with the last page: the driver clears them
/// when the window changes size, and after Ctrl+Z, and then everything must be sent again.
/// </remarks>
internal sealed class PageBrush(Func<Appearance> appearance)
{
    private const char Unprintable = '?';
    private readonly Dictionary<char, string> graphemes = [];
    private readonly StringBuilder stroke = new();
    private (int Column, int Row) cursor = (-1, -1);
    private Look? look;
    private Appearance shown = new();
    private Inks inks = new(Tint.Hues);
    private (int Column, int Row) pen;

    /// <summary>Makes the buffer show the page.</summary>
    /// <returns>The bytes to send, or an empty string where the terminal shows the page already.</returns>
    public string Paint(Page page, IOutputBuffer buffer)
    {
        stroke.Clear();
        Choose(appearance());
        (look, pen) = (null, (-1, -1));
        for (var row = 0; row < Math.Min(page.Size.Rows, buffer.Rows); row++)
        {
            PaintRow(page, buffer, row);
        }

        return Finish((page.CursorColumn, page.CursorRow));
    }

    // A cell that looks otherwise now differs from what the driver holds, so a changed wish repaints what it concerns.
    private void Choose(Appearance wished)
    {
        if (wished != shown)
        {
            inks = wished.Tint == shown.Tint ? inks : new Inks(wished.Tint);
            shown = wished;
        }
    }

    private void PaintRow(Page page, IOutputBuffer buffer, int row)
    {
        for (var column = 0; column < Math.Min(page.Size.Columns, buffer.Cols); column++)
        {
            ref var held = ref buffer.Contents![row, column];
            var wanted = page[column, row];
            var ink = wanted.Shown();
            var (grapheme, attribute) = (Grapheme(shown.SevenBit ? SevenBit.Of(wanted.Glyph) : wanted.Glyph), inks.Attribute(ink));
            if (held.IsDirty || held.Grapheme != grapheme || held.Attribute != attribute)
            {
                (held.Grapheme, held.Attribute, held.IsDirty) = (grapheme, attribute, false);
                Send(column, row, grapheme, ink);
            }
        }

        buffer.DirtyLines[row] = false;
    }

    private void Send(int column, int row, string grapheme, Look wanted)
    {
        if (pen != (column, row))
        {
            MoveTo(column, row);
        }

        if (look != wanted)
        {
            stroke.Append(inks.Code(wanted));
            look = wanted;
        }

        stroke.Append(grapheme);
        pen = (column + 1, row);
    }

    // Hidden while the cells change, so that it does not flit about; then left where readers and braille displays look.
    private string Finish((int Column, int Row) wanted)
    {
        var drew = stroke.Length > 0;
        if (!drew && wanted == cursor)
        {
            return "";
        }

        if (drew)
        {
            stroke.Insert(0, "\e[?25l").Append("\e[0m");
        }

        MoveTo(wanted.Column, wanted.Row);
        stroke.Append(drew ? "\e[?25h" : "");
        cursor = wanted;
        return stroke.ToString();
    }

    private void MoveTo(int column, int row) =>
        stroke.Append(CultureInfo.InvariantCulture, $"\e[{row + 1};{column + 1}H");

    // The driver holds its glyphs as strings; one of each is enough, however often a page is compared.
    private string Grapheme(char glyph)
    {
        if (!graphemes.TryGetValue(glyph, out var grapheme))
        {
            grapheme = (char.IsControl(glyph) || char.IsSurrogate(glyph) ? Unprintable : glyph).ToString();
            graphemes.Add(glyph, grapheme);
        }

        return grapheme;
    }
}
