using RackSide.Training.Kit;

namespace RackSide.Files;

/// <summary>What a gym owns: from its house rules, or from a file that holds nothing but a kit.</summary>
internal static class KitFile
{
    /// <summary>Reads a kit from a file; a file that cannot be read is a mistake too.</summary>
    public static Reading<GymKit> ReadFrom(string path) => TextFile.Read(path, text => Read(text, path));

    /// <summary>Reads a kit from text. One that has training days is a house-rules file, and all of it must be right.</summary>
    public static Reading<GymKit> Read(string text, string fileName)
    {
        var mistakes = new MistakeList(fileName);
        var fields = FileFields.Of(text, "unit, bars and plates, as docs/kit.md shows", mistakes);
        if (fields?.Has("training_days") == true)
        {
            var rules = GymFile.Read(text, fileName);
            return new Reading<GymKit>(rules.Value?.Kit, rules.Mistakes);
        }

        var kit = fields is null ? null : new KitReader(fields, mistakes).Read();
        fields?.TellUnknown();
        return mistakes.Close(kit);
    }
}
