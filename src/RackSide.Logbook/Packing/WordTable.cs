namespace RackSide.Logbook.Packing;

/// <summary>Words written once, and named by their place afterwards.</summary>
internal sealed class WordTable
{
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private readonly List<string> words = [];

    /// <summary>A table that was written.</summary>
    public static WordTable Read(BinaryReader from)
    {
        var table = new WordTable();
        for (var n = from.Read7BitEncodedInt(); n > 0; n--)
        {
            table.words.Add(from.ReadString());
        }

        return table;
    }

    /// <summary>Writes the table.</summary>
    public void Write(BinaryWriter to)
    {
        to.Write7BitEncodedInt(words.Count);
        words.ForEach(to.Write);
    }

    /// <summary>Writes a word's place.</summary>
    public void Write(string word, BinaryWriter to)
    {
        if (!places.TryGetValue(word, out var place))
        {
            places[word] = place = words.Count;
            words.Add(word);
        }

        to.Write7BitEncodedInt(place);
    }

    /// <summary>The word whose place stands next.</summary>
    public string Next(BinaryReader from) => words[from.Read7BitEncodedInt()];
}
