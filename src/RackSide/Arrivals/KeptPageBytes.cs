using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Settings;

namespace RackSide.Arrivals;

/// <summary>Kept pages as bytes.</summary>
internal static class KeptPageBytes
{
    /// <summary>Writes a page.</summary>
    public static void Write(this BinaryWriter to, KeptPage page)
    {
        to.Write(page.From.ToUnixTimeTicks());
        to.Write(page.Until.ToUnixTimeTicks());
        to.Write(page.Look);
        var (shown, size) = (page.Shown, page.Shown.Size);
        to.Write7BitEncodedInt(size.Columns);
        to.Write7BitEncodedInt(size.Rows);
        to.Write(size.Big);
        to.Write(size.Fine);
        to.Write(size.Steady);
        to.Write7BitEncodedInt(shown.CursorColumn);
        to.Write7BitEncodedInt(shown.CursorRow);
        foreach (var (column, row) in Places(size))
        {
            to.Write(shown[column, row].Glyph);
            to.Write((byte)shown[column, row].Look);
        }
    }

    /// <summary>Reads a page.</summary>
    /// <exception cref="IOException">The bytes end before it does.</exception>
    /// <exception cref="ArgumentException">It is none.</exception>
    public static KeptPage ReadPage(this BinaryReader from)
    {
        var (begins, ends, look) = (Moment(from), Moment(from), ReadLook(from));
        var size = new PageSize(from.Read7BitEncodedInt(), from.Read7BitEncodedInt()) { Big = from.ReadBoolean(), Fine = from.ReadBoolean(), Steady = from.ReadBoolean() };
        var (column, row) = (from.Read7BitEncodedInt(), from.Read7BitEncodedInt());
        return new KeptPage(Page.Of(size, [.. Places(size).Select(_ => new Cell(from.ReadChar(), (Look)from.ReadByte()))], column, row), look, begins, ends);
    }

    private static IEnumerable<(int Column, int Row)> Places(PageSize size) =>
        Enumerable.Range(0, size.Rows).SelectMany(row => Enumerable.Range(0, size.Columns).Select(column => (column, row)));

    private static void Write(this BinaryWriter to, Appearance look)
    {
        to.Write((byte)look.Tint);
        to.Write(look.SevenBit);
        to.Write(look.Big);
        to.Write(look.Flash);
        to.Write(look.Fine);
    }

    private static Appearance ReadLook(BinaryReader from) => new()
    {
        Tint = (Tint)from.ReadByte(),
        SevenBit = from.ReadBoolean(),
        Big = from.ReadBoolean(),
        Flash = from.ReadBoolean(),
        Fine = from.ReadBoolean(),
    };

    private static Instant Moment(BinaryReader from) => Instant.FromUnixTimeTicks(from.ReadInt64());
}
