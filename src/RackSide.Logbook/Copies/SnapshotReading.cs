using RackSide.Logbook.Documents;
using RackSide.Logbook.Journals;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Copies;

/// <summary>
/// Reads what a logbook holds while another process has it open: the verified copy, and over it the journal, whose records
/// say by themselves how far they are whole. The log itself is not looked at.
/// </summary>
internal static class SnapshotReading
{
    // The copy and the journal are renewed one after the other; whoever reads in between reads again.
    private const int Turns = 5;

    /// <summary>All that can be read.</summary>
    /// <param name="read">Gives the bytes of a file by its name, or null.</param>
    /// <exception cref="DamagedFileException">The copy cannot be read.</exception>
    /// <exception cref="FileNotFoundException">There is no copy.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote it.</exception>
    public static Contents Of(Func<string, byte[]?> read)
    {
        for (var turn = 1; ; turn++)
        {
            var contents = LogFile.Read(read(FileNames.Copy) ?? throw new FileNotFoundException("there is no copy yet"), FileNames.Copy);
            var journal = Journal(read);
            if (journal is null || journal.Follows <= contents.Writes || turn == Turns)
            {
                TakeOver(contents, journal);
                return contents;
            }
        }
    }

    private static JournalReading? Journal(Func<string, byte[]?> read)
    {
        try
        {
            return read(FileNames.Journal) is { } bytes && JournalReading.Of(bytes) is { HasHead: true } journal ? journal : null;
        }
        catch (Exception e) when (e is IOException or InvalidDataException)
        {
            return null;
        }
    }

    // Only what follows without a gap: a fact may rest on the one before it.
    private static void TakeOver(Contents contents, JournalReading? journal)
    {
        foreach (var record in journal?.Records.SkipWhile(r => r.Number <= contents.Writes) ?? [])
        {
            if (record.Number != contents.Writes + 1)
            {
                return;
            }

            contents.Replay(Entries.FromBytes(record.Bytes));
            contents.Writes = record.Number;
        }
    }
}
