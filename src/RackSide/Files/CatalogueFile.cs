using RackSide.Training.Exercises;

namespace RackSide.Files;

/// <summary>The exercise catalogue that comes with the program.</summary>
public static class CatalogueFile
{
    private const string Name = "exercises.yaml";

    /// <summary>Reads the catalogue with its ladders. It takes about 3 ms of a desktop processor, compiled ahead of time, so read it once.</summary>
    /// <exception cref="InvalidDataException">The embedded file is faulty, which is a bug.</exception>
    public static Catalogue Read()
    {
        var exercises = Read(EmbeddedText.Of(Name), Name).OrThrow();
        return new Catalogue(exercises.All, LadderFile.Read(exercises));
    }

    /// <summary>Reads a catalogue from text.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="fileName">The name that mistakes are told under.</param>
    public static Reading<Catalogue> Read(string text, string fileName)
    {
        var mistakes = new MistakeList(fileName);
        if (YamlText.Read(text, mistakes) is not YamlList list)
        {
            mistakes.Add(1, "", "no list of exercises", "begin each exercise with a dash and its id");
            return mistakes.Close<Catalogue>(null);
        }

        var reader = new ExerciseReader(mistakes);
        var exercises = list.Items.Select(reader.Read).OfType<Exercise>().ToList();
        return mistakes.Close(mistakes.Any ? null : new Catalogue(exercises));
    }
}
