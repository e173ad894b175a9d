namespace RackSide.Logbook.Documents;

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

    /// <summary>Writes the places of several.</summary>
    public void Write(IReadOnlyList<string> several, BinaryWriter to)
    {
        to.Write7BitEncodedInt(several.Count);
        foreach (var word in several)
        {
            Write(word, to);
        }
    }

    /// <summary>The word whose place stands next.</summary>
    public string Next(BinaryReader from) => words[from.Read7BitEncodedInt()];

    /// <summary>The words whose places stand next.</summary>
    public string[] Several(BinaryReader from)
    {
        var several = new string[from.Read7BitEncodedInt()];
        for (var i = 0; i < several.Length; i++)
        {
            several[i] = Next(from);
        }

        return several;
    }
}
