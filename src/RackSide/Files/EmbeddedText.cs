namespace RackSide.Files;

/// <summary>The files that come inside the program.</summary>
internal static class EmbeddedText
{
    /// <summary>The text of an embedded file of src/RackSide/Data.</summary>
    public static string Of(string name)
    {
        using var stream = typeof(EmbeddedText).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not embedded");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
