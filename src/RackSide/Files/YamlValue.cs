namespace RackSide.Files;

/// <summary>Something written in a YAML file, with the line it begins on.</summary>
internal abstract record YamlValue(int Line)
{
    /// <summary>What it is, for a sentence.</summary>
    public abstract string Kind { get; }
}

/// <summary>A word, number or sentence; every scalar is read as the text that was typed.</summary>
internal sealed record YamlScalar(int Line, string Text) : YamlValue(Line)
{
    public override string Kind => "a single value";
}

/// <summary>A list.</summary>
internal sealed record YamlList(int Line, IReadOnlyList<YamlValue> Items) : YamlValue(Line)
{
    public override string Kind => "a list";
}

/// <summary>Fields with their values, in the order written; a field written twice is told once and kept once.</summary>
internal sealed record YamlMap(int Line, IReadOnlyList<YamlField> Fields) : YamlValue(Line)
{
    public override string Kind => "a set of fields";
}

/// <summary>One field of a map.</summary>
internal sealed record YamlField(string Name, int Line, YamlValue Value);
