namespace RackSide.Pages.Rack;

/// <summary>The keys as the help page and docs/keys.md tell them, both made from the key table.</summary>
public static class HelpLines
{
    /// <summary>One line a key for a page of that width.</summary>
    public static IEnumerable<string> For(int width) =>
        KeyTable.Rows.Select(r => Frame.Fit($"{(r.Pad.Length > 0 ? r.Pad : r.Others),-7} {Short(r)}", width));

    /// <summary>The table of docs/keys.md.</summary>
    public static IEnumerable<string> Markdown()
    {
        yield return "| pad | other keys | a set in hand | a clock running | a menu or list |";
        yield return "|---|---|---|---|---|";
        foreach (var r in KeyTable.Rows)
        {
            yield return $"| {r.Pad} | {r.Others} | {Or(r.Lifting)} | {Or(r.Resting)} | {Or(r.Choosing)} |";
        }
    }

    private static string Short(KeyRow r) => r.Lifting == r.Resting || r.Resting.Length == 0 ? r.Lifting : $"{r.Lifting} | rest: {r.Resting}";

    private static string Or(string text) => text.Length == 0 ? "nothing" : text;
}
