using RackSide.Training.Exercises;

namespace RackSide.Files;

/// <summary>The ladders that come with the program.</summary>
public static class LadderFile
{
    private const string Name = "ladders.yaml";

    /// <summary>The text of the ladders that come with the program.</summary>
    public static string Text => EmbeddedText.Of(Name);

    /// <summary>Reads them.</summary>
    /// <exception cref="InvalidDataException">The embedded file is faulty, which is a bug.</exception>
    public static IReadOnlyList<Ladder> Read(Catalogue exercises) => [.. Read(Text, Name, exercises).OrThrow()];

    /// <summary>Reads ladders from text.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="fileName">The name that mistakes are told under.</param>
    /// <param name="exercises">The exercises that rungs may name.</param>
    public static Reading<IReadOnlyList<Ladder>> Read(string text, string fileName, Catalogue exercises)
    {
        var mistakes = new MistakeList(fileName);
        if (YamlText.Read(text, mistakes) is not YamlList list)
        {
            mistakes.Add(1, "", "no list of ladders", "begin each ladder with a dash and its key");
            return mistakes.Close<IReadOnlyList<Ladder>>(null);
        }

        var reader = new LadderReader(exercises, mistakes);
        var ladders = list.Items.Select(reader.Read).OfType<Ladder>().ToList();
        return mistakes.Close<IReadOnlyList<Ladder>>(mistakes.Any ? null : ladders);
    }
}
