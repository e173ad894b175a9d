using System.Text;
using LiteDB.Engine;
using RackSide.Logbook.Disks;

namespace RackSide.Logbook.Storing;

/// <summary>The open log: the engine over two-phase streams. One that failed to write is not touched again.</summary>
internal sealed class LogFile : IDisposable
{
    private readonly IDiskFile data;
    private readonly IDiskFile writeAhead;
    private readonly TwoPhaseStream dataStream;
    private readonly TwoPhaseStream writeAheadStream;
    private LiteEngine? engine;

    private LogFile(IDisk disk)
    {
        data = disk.Open(FileNames.Main);
        try
        {
            writeAhead = disk.Open(FileNames.WriteAhead);
        }
        catch
        {
            data.Dispose();
            throw;
        }

        dataStream = new TwoPhaseStream(data, writeAhead: false);
        writeAheadStream = new TwoPhaseStream(writeAhead, writeAhead: true);
    }

    /// <summary>Opens the log and reads everything in it. Nothing is written before all of it was found right.</summary>
    /// <exception cref="DamagedFileException">It cannot be read, or what it says does not hold.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote it.</exception>
    /// <exception cref="IOException">It could not be opened.</exception>
    public static (LogFile Log, Contents Contents) Open(IDisk disk)
    {
        var log = new LogFile(disk);
        try
        {
            var contents = log.Read();
            log.LetWrite(true);
            return (log, contents);
        }
        catch (NewerFormatException)
        {
            log.GiveUp();
            throw;
        }
        catch (Exception e)
        {
            log.GiveUp();
            throw new DamagedFileException(FileNames.Main, e);
        }
    }

    /// <summary>Opens a log that was verified when it was left at rest and has not changed since; null where it has no register.</summary>
    /// <exception cref="DamagedFileException">It cannot be read all the same.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote it.</exception>
    public static (LogFile Log, Register Register)? OpenAtRest(IDisk disk)
    {
        var log = new LogFile(disk);
        try
        {
            log.Start();
            if (log.engine!.ReadRegister() is var (about, lifters, share, state))
            {
                log.LetWrite(true);
                return (log, new Register(about, lifters, share, state, log.Reader));
            }

            log.GiveUp();
            return null;
        }
        catch (Exception e)
        {
            log.GiveUp();
            throw e is NewerFormatException ? e : new DamagedFileException(FileNames.Main, e);
        }
    }

    /// <summary>Reads documents from it.</summary>
    public IKeeping Reader => new LogReader(engine!, e => Failed(e));

    /// <summary>Told of a document that cannot be read; gives where to read from instead.</summary>
    public Func<Exception, IKeeping> Failed { get; set; } = e => throw new DamagedFileException(FileNames.Main, e);

    /// <summary>Reads and verifies the bytes of a log that is at rest.</summary>
    /// <exception cref="DamagedFileException">They cannot be read, or what they say does not hold.</exception>
    /// <exception cref="NewerFormatException">A newer version wrote them.</exception>
    /// <param name="image">The log.</param>
    /// <param name="name">Its name.</param>
    /// <param name="ahead">Its write-ahead log; null where that is empty.</param>
    public static Contents Read(byte[] image, string name, byte[]? ahead = null)
    {
        LiteEngine? engine = null;
        try
        {
            Guard(image);
            var stream = new MemoryStream();
            stream.Write(image);
            var writeAhead = new MemoryStream();
            writeAhead.Write(ahead ?? []);
            engine = Engines.Open(stream, writeAhead);
            var contents = engine.ReadAll();
            engine.Dispose();
            return contents;
        }
        catch (Exception e) when (e is not NewerFormatException)
        {
            Engines.Forsake(engine);
            throw new DamagedFileException(name, e);
        }
    }

    /// <summary>Writes documents in one synced transaction.</summary>
    public void Write(IEnumerable<Stored> documents, About about) => engine!.Write(documents, about);

    /// <summary>Brings everything into the one file and returns its bytes.</summary>
    public byte[] Settle()
    {
        engine!.Checkpoint();
        return data.ReadAll();
    }

    /// <summary>Lets go of the files without writing anything more; what the engine had not committed is not there next time.</summary>
    public void GiveUp()
    {
        LetWrite(false);
        Engines.Forsake(engine);
        engine = null;
        Dispose();
    }

    /// <summary>Settles what can be settled and lets go of the files.</summary>
    public void Dispose()
    {
        engine?.Dispose();
        engine = null;
        data.Dispose();
        writeAhead.Dispose();
    }

    private void LetWrite(bool yes) => (dataStream.Writable, writeAheadStream.Writable) = (yes, yes);

    private Contents Read()
    {
        Start();
        return engine!.ReadAll();
    }

    private void Start()
    {
        var start = new byte[TwoPhaseStream.Page];
        Guard(start.AsSpan(0, data.Read(start, 0)));
        engine = Engines.Open(dataStream, writeAheadStream);
    }

    // The engine makes an empty database of a short file and cuts a foreign one to whole pages before it looks inside.
    private static void Guard(ReadOnlySpan<byte> start)
    {
        var own = start.Length >= TwoPhaseStream.Page
            && start.Slice(32, Mark.Length).SequenceEqual(Mark)
            && start[32 + Mark.Length] == LayoutVersion;
        if (!own)
        {
            throw new InvalidDataException("this is not a RackSide logbook");
        }
    }

    private static readonly byte[] Mark = Encoding.ASCII.GetBytes("** This is a LiteDB file **");

    private const byte LayoutVersion = 8;
}

/// <summary>A file that cannot be trusted.</summary>
internal sealed class DamagedFileException(string name, Exception inner) : Exception($"{name} is damaged", inner)
{
    /// <summary>Which.</summary>
    public string Name { get; } = name;
}
