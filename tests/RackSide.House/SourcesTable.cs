using System.Text.RegularExpressions;
using RackSide.Files;

namespace RackSide.House;

/// <summary>src/RackSide/Data/sources.yaml held against the code it speaks of.</summary>
/// <param name="Tests">Every test class, and every test as <c>Class.Method</c>.</param>
/// <param name="Files">Every file of the tree.</param>
/// <param name="Codes">The reason codes that prescriptions carry.</param>
/// <param name="Formulas">The formulas, each as <c>Enum.Member</c>.</param>
internal sealed partial record SourcesTable(
    IReadOnlySet<string> Tests, IReadOnlyCollection<string> Files, IReadOnlyCollection<string> Codes, IReadOnlyCollection<string> Formulas)
{
    private static readonly string[] Words = ["seen", "second-hand", "from memory", "practice", "ours"];

    /// <summary>What the table says that is not so, and what it leaves out.</summary>
    /// <param name="sources">The table.</param>
    /// <param name="withoutRule">Files of the rooms of rules that hold none, each with what it holds instead.</param>
    public IEnumerable<string> Violations(RuleSources sources, IReadOnlyDictionary<string, string> withoutRule)
    {
        var rules = sources.Groups.SelectMany(g => g.Rules).ToList();
        return rules.SelectMany(Wrong)
            .Concat(WrongCodes(rules))
            .Concat(Formulas.Where(f => !rules.Any(r => r.Where.Contains(f))).Select(f => $"{f}: the formula has no row"))
            .Concat(WithoutRow(rules, withoutRule))
            .Concat(withoutRule.Keys.Where(f => !RuleFiles().Contains(f)).Select(f => $"{f}: is said to hold no rule, but there is no such file"));
    }

    /// <summary>Every test class, and every method of one as <c>Class.Method</c>, that these sources declare.</summary>
    public static IReadOnlySet<string> TestsIn(IEnumerable<Source> sources) => sources.SelectMany(Declarations).ToHashSet();

    private IEnumerable<string> Wrong(RuleSource rule)
    {
        if (rule.Tests.Count == 0)
        {
            yield return $"{rule.Says}: names no test";
        }

        if (!Words.Any(word => rule.Status.Contains(word, StringComparison.Ordinal)))
        {
            yield return $"{rule.Says}: '{rule.Status}' is no status";
        }

        foreach (var test in rule.Tests.Where(test => !Tests.Contains(test)))
        {
            yield return $"{rule.Says}: there is no test '{test}'";
        }

        foreach (var place in rule.Where.Where(place => !Formulas.Contains(place) && !Files.Any(f => f.EndsWith("/" + place, StringComparison.Ordinal))))
        {
            yield return $"{rule.Says}: there is no file or formula '{place}'";
        }
    }

    private IEnumerable<string> WrongCodes(IReadOnlyList<RuleSource> rules)
    {
        var spoken = rules.SelectMany(r => r.Codes).ToList();
        return Codes.Except(spoken).Select(code => $"{code}: the reason code has no row")
            .Concat(spoken.Except(Codes).Select(code => $"{code}: no prescription gives this reason code"))
            .Concat(spoken.GroupBy(code => code).Where(same => same.Count() > 1).Select(same => $"{same.Key}: the reason code has two rows"));
    }

    private IEnumerable<string> WithoutRow(IReadOnlyList<RuleSource> rules, IReadOnlyDictionary<string, string> withoutRule)
    {
        foreach (var file in RuleFiles())
        {
            var named = rules.Any(r => r.Where.Any(place => place == file || place.StartsWith(file[..^2], StringComparison.Ordinal)));
            if (named == withoutRule.ContainsKey(file))
            {
                yield return named ? $"{file}: has a row, and is said to hold no rule" : $"{file}: has no row";
            }
        }
    }

    private IReadOnlySet<string> RuleFiles() => Files.Where(f => RuleFile().IsMatch(f)).Select(f => f[(f.LastIndexOf('/') + 1)..]).ToHashSet();

    private static IEnumerable<string> Declarations(Source source)
    {
        var type = "";
        foreach (Match found in Declared().Matches(source.Code))
        {
            var name = found.Groups["name"].Value;
            type = found.Groups["class"].Success ? name : type;
            yield return found.Groups["class"].Success ? name : $"{type}.{name}";
        }
    }

    [GeneratedRegex("^src/RackSide.Training/(Progression|Strength|Skills|Loading)/")]
    private static partial Regex RuleFile();

    [GeneratedRegex(@"\b(?:(?<class>class)|void|Task)\s+(?<name>\w+)")]
    private static partial Regex Declared();
}
