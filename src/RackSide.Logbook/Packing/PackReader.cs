using System.Text;
using LiteDB;
using NodaTime;
using RackSide.Logbook.Documents;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Packing;

/// <summary>Reads what <see cref="PackWriter"/> wrote, in the same order.</summary>
internal sealed class PackReader
{
    private readonly BinaryReader from;
    private readonly WordTable words;
    private long lastCount;
    private long lastTicks;

    private PackReader(byte[] bytes)
    {
        from = new BinaryReader(new MemoryStream(bytes), Encoding.UTF8);
        words = WordTable.Read(from);
    }

    /// <summary>Reads one thing of bytes that hold nothing else.</summary>
    /// <param name="bytes">What was written.</param>
    /// <param name="what">What it is called where it cannot be read.</param>
    /// <param name="read">Reads it.</param>
    /// <exception cref="InvalidDataException">The bytes are not of that form.</exception>
    public static T Read<T>(byte[] bytes, string what, Func<PackReader, T> read)
    {
        try
        {
            var pack = new PackReader(bytes);
            var one = read(pack);
            return pack.from.BaseStream.Position == bytes.Length ? one : throw new InvalidDataException($"{what} is longer than it says");
        }
        catch (Exception e) when (e is IOException or FormatException or ArgumentException or OverflowException)
        {
            throw new InvalidDataException($"{what} cannot be read", e);
        }
    }

    /// <summary>A whole number.</summary>
    public long Number()
    {
        var coded = from.Read7BitEncodedInt64();
        return (coded >>> 1) ^ -(coded & 1);
    }

    /// <summary>A whole number of 32 bits.</summary>
    public int Int() => checked((int)Number());

    /// <summary>A yes or no.</summary>
    public bool Flag() => from.ReadBoolean();

    /// <summary>A word.</summary>
    public string Word() => words.Next(from);

    /// <summary>A value of a closed list.</summary>
    public T Word<T>(Words<T> list)
        where T : struct, Enum => list.Of(Word());

    /// <summary>A word, or null.</summary>
    public string? WordOrNone() => Flag() ? Word() : null;

    /// <summary>An identity.</summary>
    public FactId Id()
    {
        var rack = Word();
        lastCount = unchecked(lastCount + Number());
        return new FactId(rack, lastCount);
    }

    /// <summary>An instant.</summary>
    public Instant At()
    {
        lastTicks = unchecked(lastTicks + Number());
        return Instant.FromUnixTimeTicks(lastTicks);
    }

    /// <summary>A length of time.</summary>
    public Duration Length() => Duration.FromTicks(Number());

    /// <summary>A date.</summary>
    public LocalDate Date() => Times.Date(Int());

    /// <summary>A mass that is there.</summary>
    public Mass Mass() => MassOrNone() ?? throw new FormatException("a mass is missing");

    /// <summary>A mass, or null.</summary>
    public Mass? MassOrNone() => Flag() ? new Mass(Number() / 1000m, Word(Words.Units)) : null;

    /// <summary>Several of a kind.</summary>
    public T[] Several<T>(Func<T> read)
    {
        // Each takes at least a byte, so a damaged count cannot ask for more memory than the bytes could fill.
        var count = Number();
        var several = new T[count <= from.BaseStream.Length ? count : throw new FormatException("a count is too large")];
        for (var i = 0; i < several.Length; i++)
        {
            several[i] = read();
        }

        return several;
    }

    /// <summary>A document.</summary>
    public BsonDocument Document()
    {
        var bytes = from.ReadBytes(Int());
        try
        {
            return BsonSerializer.Deserialize(bytes);
        }
        catch (Exception e)
        {
            // The engine's reader throws many things.
            throw new FormatException("a document inside cannot be read", e);
        }
    }
}
