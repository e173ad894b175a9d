using System.Text;
using RackSide.Files;

namespace RackSide.House;

/// <summary>docs/sources.md as it follows from src/RackSide/Data/sources.yaml.</summary>
internal static class SourcesMarkdown
{
    private const int Width = 120;

    private const string Head = """
        # Where the rules and numbers come from

        A row for each rule: what it says, where it stands in the code, who says so, how sure that is, and which test holds it.
        Written from `src/RackSide/Data/sources.yaml` by `RACKSIDE_ACCEPT=1 dotnet test tests/RackSide.House`; change it there.

        Status: **seen** in the primary text or its abstract; **second-hand**, seen in a copy only; **from memory**, not looked up
        again; **practice**, common practice with no single source; **ours**, decided here, with the reason beside the rule.
        General information for healthy adults, not medical advice; a clinician's or a qualified coach's word goes first.
        """;

    /// <summary>The document.</summary>
    public static string Of(RuleSources sources)
    {
        var text = new StringBuilder(Head.ReplaceLineEndings("\n")).Append('\n');
        foreach (var group in sources.Groups)
        {
            text.Append($"\n## {group.Title}\n").Append(group.Note is null ? "" : Wrapped(group.Note) + "\n");
            text.Append("| rule or formula | where | source | status | test |\n|---|---|---|---|---|\n");
            text.AppendJoin("", group.Rules.Select(Row)).Append(group.After is null ? "" : "\n" + Wrapped(group.After));
        }

        return text.ToString();
    }

    private static string Row(RuleSource rule)
    {
        var codes = rule.Codes.Count > 0 ? Ticked(rule.Codes) + ": " : "";
        return $"| {codes}{rule.Says} | {Ticked(rule.Where)} | {rule.Source} | {rule.Status} | {Ticked(rule.Tests)} |\n";
    }

    private static string Ticked(IEnumerable<string> names) => string.Join(", ", names.Select(name => $"`{name}`"));

    private static string Wrapped(string text)
    {
        var lines = new List<string> { "" };
        foreach (var word in text.Split(' '))
        {
            if (lines[^1].Length + word.Length + 1 > Width)
            {
                lines.Add("");
            }

            lines[^1] += lines[^1].Length > 0 ? " " + word : word;
        }

        return string.Join('\n', lines) + "\n";
    }
}
