namespace RackSide.Files;

/// <summary>
/// Reads the fields of one map by name and remembers which were asked for, so that a field nobody asks for can be told
/// as unknown. Every reading that fails adds a mistake and goes on.
/// </summary>
internal sealed class Fields(YamlMap map, MistakeList mistakes)
{
    private readonly List<string> known = [];

    /// <summary>The line the map begins on.</summary>
    public int Line => map.Line;

    /// <summary>Whether the field is written.</summary>
    public bool Has(string name) => Find(name) is not null;

    /// <summary>The line of a field, or of the map where the field is not written.</summary>
    public int LineOf(string name) => Find(name)?.Line ?? map.Line;

    /// <summary>Counts a field as known without reading it.</summary>
    public void Know(string name) => Ask(name);

    /// <summary>A value that must be there.</summary>
    public T? Required<T>(string name, Form<T> form)
        where T : struct
    {
        NoteMissing(name, form.Right);
        return Optional(name, form);
    }

    /// <summary>A value that may be there.</summary>
    public T? Optional<T>(string name, Form<T> form)
        where T : struct => Scalar(name, form.Right) is { } written ? form.Read(written, name, mistakes) : null;

    /// <summary>A text that must be there and not be empty.</summary>
    public string? RequiredText(string name, string right)
    {
        NoteMissing(name, right);
        return OptionalText(name, right);
    }

    /// <summary>A text that may be there, but not empty.</summary>
    public string? OptionalText(string name, string right)
    {
        var written = Scalar(name, right);
        if (written is { Text.Length: > 0 })
        {
            return written.Text;
        }

        if (written is not null)
        {
            mistakes.Add(written.Line, name, "nothing is written here", right);
        }

        return null;
    }

    /// <summary>A field whose value is itself a set of fields.</summary>
    public YamlMap? RequiredMap(string name, string right)
    {
        NoteMissing(name, right);
        return Value<YamlMap>(name, "a set of fields", right);
    }

    /// <summary>The same where it may be left out.</summary>
    public YamlMap? OptionalMap(string name, string right) => Value<YamlMap>(name, "a set of fields", right);

    /// <summary>Training days by a word of the writer's own: a map that must be there and not be empty.</summary>
    public IReadOnlyList<YamlField> RequiredEntries(string name, string right)
    {
        var entries = RequiredMap(name, right)?.Fields;
        if (entries is { Count: 0 })
        {
            mistakes.Add(LineOf(name), name, "no training day stands in it", right);
        }

        return entries ?? [];
    }

    /// <summary>A list that must be there.</summary>
    public IReadOnlyList<YamlValue>? RequiredList(string name, string right)
    {
        NoteMissing(name, right);
        return OptionalList(name, right);
    }

    /// <summary>A list that may be there; one value alone is a list of one.</summary>
    public IReadOnlyList<YamlValue>? OptionalList(string name, string right) =>
        Ask(name) is { Value: YamlScalar { Text.Length: > 0 } alone } ? [alone] : Value<YamlList>(name, "a list", right)?.Items;

    /// <summary>Tells every field that was not asked for. Call it when all known fields have been read.</summary>
    public void TellUnknown()
    {
        foreach (var field in map.Fields.Where(f => !known.Contains(f.Name)))
        {
            var meant = Nearest.To(field.Name, known);
            mistakes.Add(field.Line, field.Name, "there is no such field here",
                meant is null ? $"the fields are {string.Join(", ", known)}" : $"did you mean {meant}?");
        }
    }

    private YamlScalar? Scalar(string name, string right) => Value<YamlScalar>(name, "a single value", right);

    private T? Value<T>(string name, string expected, string right)
        where T : YamlValue
    {
        var field = Ask(name);
        if (field is null or { Value: T })
        {
            return field?.Value as T;
        }

        var wrong = field.Value is YamlScalar { Text.Length: 0 }
            ? "nothing is written here"
            : $"{field.Value.Kind} stands where {expected} should be";
        mistakes.Add(field.Line, name, wrong, right);
        return null;
    }

    private void NoteMissing(string name, string right)
    {
        if (Ask(name) is null)
        {
            mistakes.Add(map.Line, name, "missing", right);
        }
    }

    private YamlField? Ask(string name)
    {
        if (!known.Contains(name))
        {
            known.Add(name);
        }

        return Find(name);
    }

    private YamlField? Find(string name) => map.Fields.FirstOrDefault(f => f.Name == name);
}
