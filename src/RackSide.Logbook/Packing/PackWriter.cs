using System.Text;
using LiteDB;
using NodaTime;
using RackSide.Logbook.Documents;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Packing;

/// <summary>
/// Writes values one after the other without names: whole numbers as long as they need to be, a word once and afterwards
/// its place, an identity and an instant as the step from the one before.
/// </summary>
internal sealed class PackWriter
{
    private readonly WordTable words = new();
    private readonly MemoryStream packed = new();
    private readonly BinaryWriter to;
    private long lastCount;
    private long lastTicks;

    public PackWriter()
    {
        to = new BinaryWriter(packed, Encoding.UTF8);
    }

    /// <summary>What was written, after the words it names.</summary>
    public byte[] ToArray()
    {
        using var all = new MemoryStream();
        using var head = new BinaryWriter(all, Encoding.UTF8);
        words.Write(head);
        packed.WriteTo(all);
        return all.ToArray();
    }

    /// <summary>A whole number; small ones of either sign are short.</summary>
    public void Number(long number) => to.Write7BitEncodedInt64((number << 1) ^ (number >> 63));

    /// <summary>A yes or no.</summary>
    public void Flag(bool flag) => to.Write(flag);

    /// <summary>A word.</summary>
    public void Word(string word) => words.Write(word, to);

    /// <summary>A word of a closed list.</summary>
    public void Word<T>(Words<T> list, T value)
        where T : struct, Enum => Word(list.Of(value).AsString);

    /// <summary>A word, or none.</summary>
    public void WordOrNone(string? word)
    {
        Flag(word is not null);
        if (word is not null)
        {
            Word(word);
        }
    }

    /// <summary>An identity.</summary>
    public void Id(FactId id)
    {
        Word(id.Rack);
        Number(unchecked(id.Sequence - lastCount));
        lastCount = id.Sequence;
    }

    /// <summary>An instant, to 100 ns.</summary>
    public void At(Instant at)
    {
        var ticks = at.ToUnixTimeTicks();
        Number(unchecked(ticks - lastTicks));
        lastTicks = ticks;
    }

    /// <summary>A length of time, to 100 ns.</summary>
    public void Length(Duration length) => Number(length.BclCompatibleTicks);

    /// <summary>A date.</summary>
    public void Date(LocalDate date) => Number(Times.Of(date).AsInt32);

    /// <summary>A mass, or none.</summary>
    /// <exception cref="ArgumentException">It has more than three decimals.</exception>
    public void Mass(Mass? mass)
    {
        Flag(mass is not null);
        if (mass is { } m)
        {
            Number(Masses.Thousandths(m));
            Word(Words.Units, m.Unit);
        }
    }

    /// <summary>Several of a kind.</summary>
    public void Several<T>(IReadOnlyCollection<T> items, Action<T> write)
    {
        Number(items.Count);
        foreach (var item in items)
        {
            write(item);
        }
    }

    /// <summary>What is too rare for a form of its own, as the document that the journal has of it.</summary>
    public void Document(BsonDocument document)
    {
        var bytes = BsonSerializer.Serialize(document);
        Number(bytes.Length);
        to.Write(bytes);
    }
}
