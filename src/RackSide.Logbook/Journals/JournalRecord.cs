using System.Buffers.Binary;
using System.IO.Hashing;

namespace RackSide.Logbook.Journals;

/// <summary>
/// One line of the journal: the number of a write and its bytes. It begins on a sector of 512 bytes, so that a damaged
/// one does not hide those after it: 4 bytes of mark, 4 of CRC-32 over all that follows, 4 of length, 8 of number, then
/// the bytes; integers are little-endian.
/// </summary>
internal sealed record JournalRecord(long Number, byte[] Bytes)
{
    /// <summary>Where a record may begin: every so many bytes.</summary>
    public const int Sector = 512;

    private const uint Mark = 0x4A53_5201;
    private const int Checked = 8;
    private const int Prefix = 20;

    /// <summary>How much of the journal it takes.</summary>
    public int Size => (Prefix + Bytes.Length + Sector - 1) / Sector * Sector;

    /// <summary>As it stands in the journal.</summary>
    public byte[] Frame()
    {
        var frame = new byte[Size];
        BinaryPrimitives.WriteUInt32LittleEndian(frame, Mark);
        BinaryPrimitives.WriteInt32LittleEndian(frame.AsSpan(8), Bytes.Length);
        BinaryPrimitives.WriteInt64LittleEndian(frame.AsSpan(12), Number);
        Bytes.CopyTo(frame, Prefix);
        BinaryPrimitives.WriteUInt32LittleEndian(frame.AsSpan(4), Crc32.HashToUInt32(frame.AsSpan(Checked, Prefix - Checked + Bytes.Length)));
        return frame;
    }

    /// <summary>The record that begins here, or null where none does.</summary>
    public static JournalRecord? Read(ReadOnlySpan<byte> here)
    {
        if (here.Length < Prefix || BinaryPrimitives.ReadUInt32LittleEndian(here) != Mark)
        {
            return null;
        }

        var length = BinaryPrimitives.ReadInt32LittleEndian(here[8..]);
        return length >= 0 && length <= here.Length - Prefix && IsWhole(here[..(Prefix + length)])
            ? new JournalRecord(BinaryPrimitives.ReadInt64LittleEndian(here[12..]), here.Slice(Prefix, length).ToArray())
            : null;
    }

    private static bool IsWhole(ReadOnlySpan<byte> record) =>
        BinaryPrimitives.ReadUInt32LittleEndian(record[4..]) == Crc32.HashToUInt32(record[Checked..]);
}
