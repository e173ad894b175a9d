namespace RackSide.Files;

/// <summary>The sources of the rules, which come with the program so that a reason can name its own; docs/sources.md is made from them.</summary>
public static class SourcesFile
{
    private const string Name = "sources.yaml";

    /// <summary>Reads the sources.</summary>
    /// <exception cref="InvalidDataException">The embedded file is faulty, which is a bug.</exception>
    public static RuleSources Read() => Read(EmbeddedText.Of(Name), Name).OrThrow();

    /// <summary>Reads sources from text.</summary>
    /// <param name="text">The YAML.</param>
    /// <param name="fileName">The name that mistakes are told under.</param>
    public static Reading<RuleSources> Read(string text, string fileName)
    {
        var mistakes = new MistakeList(fileName);
        if (YamlText.Read(text, mistakes) is not YamlList list)
        {
            mistakes.Add(1, "", "no list of groups", "begin each group with a dash and its title");
            return mistakes.Close<RuleSources>(null);
        }

        var groups = Each(list.Items, "a group", mistakes, Group);
        return mistakes.Close(mistakes.Any ? null : new RuleSources(groups));
    }

    private static RuleGroup Group(Fields fields, MistakeList mistakes)
    {
        var title = fields.RequiredText("title", "write a heading") ?? "";
        var note = fields.OptionalText("note", "write a sentence or leave it out");
        var rules = fields.RequiredList("rules", "begin each rule with a dash and what it says") ?? [];
        var after = fields.OptionalText("after", "write a sentence or leave it out");
        return new RuleGroup(title, note, Each(rules, "a rule", mistakes, Rule), after);
    }

    private static RuleSource Rule(Fields fields, MistakeList mistakes) => new(
        fields.RequiredText("says", "write the rule in a line") ?? "",
        Words(fields.OptionalList("codes", "write reason codes in square brackets")),
        Words(fields.RequiredList("where", "write files in square brackets")),
        fields.RequiredText("source", "write who says so, or none") ?? "",
        fields.RequiredText("status", "write seen, second-hand, from memory, practice or ours") ?? "",
        Words(fields.RequiredList("tests", "write tests in square brackets")));

    private static IReadOnlyList<T> Each<T>(
        IReadOnlyList<YamlValue> items, string what, MistakeList mistakes, Func<Fields, MistakeList, T> read)
    {
        List<T> all = [];
        foreach (var item in items)
        {
            if (item is not YamlMap map)
            {
                mistakes.Add(item.Line, "", $"{item.Kind} stands where {what} should be", "begin it with a dash and a field");
                continue;
            }

            var fields = new Fields(map, mistakes);
            all.Add(read(fields, mistakes));
            fields.TellUnknown();
        }

        return all;
    }

    private static IReadOnlyList<string> Words(IReadOnlyList<YamlValue>? list) =>
        [.. (list ?? []).OfType<YamlScalar>().Select(s => s.Text)];
}
