namespace RackSide.Files;

/// <summary>The outermost fields of a file.</summary>
internal static class FileFields
{
    /// <summary>The fields, or null where the text has none; then a mistake says why.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="expected">What belongs in the file.</param>
    /// <param name="mistakes">Where mistakes go.</param>
    public static Fields? Of(string text, string expected, MistakeList mistakes)
    {
        switch (YamlText.Read(text, mistakes))
        {
            case YamlMap map:
                return new Fields(map, mistakes);
            case null or YamlScalar { Text.Length: 0 } when !mistakes.Any:
                mistakes.Add(0, "", "the file is empty", $"write {expected}");
                return null;
            case { } other:
                mistakes.Add(other.Line, "", $"{other.Kind} stands where fields should be", $"write {expected}");
                return null;
            default:
                return null;
        }
    }
}
