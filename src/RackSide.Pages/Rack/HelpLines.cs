namespace RackSide.Pages.Rack;

/// <summary>The keys as the help page and docs/keys.md tell them, both made from the key table.</summary>
public static class HelpLines
{
    private const int Wide = 76;

    /// <summary>One line a key where a page is wide enough to say both, else first for a set in hand, then for a running clock.</summary>
    public static IEnumerable<string> For(int width) => width >= Wide
        ? KeyTable.Rows.Select(r => $"{Key(r)} {Both(r)}")
        : [.. KeyTable.Rows.Select(r => $"{Key(r)} {r.Lifting}"), "while a clock runs:", .. KeyTable.Rows.Where(Differs).Select(r => $"{Key(r)} {r.Resting}")];

    /// <summary>What is read outside a session: first what the keys do there, then what they will do in a session.</summary>
    public static IEnumerable<string> Outside(int width) =>
        [.. KeyTable.Rows.Where(r => r.Choosing.Length > 0).Select(r => $"{Outside(r)} {r.Choosing}"), "in a session:", .. For(width)];

    /// <summary>The table of docs/keys.md.</summary>
    public static IEnumerable<string> Markdown()
    {
        yield return "| pad | other keys | a set in hand | a clock running | a menu or list |";
        yield return "|---|---|---|---|---|";
        foreach (var r in KeyTable.Rows)
        {
            yield return $"| {Or(r.Pad)} | {r.Others} | {Or(r.Lifting)} | {Or(r.Resting)} | {Or(r.Choosing)} |";
        }
    }

    // The menu with its digits is a session's; elsewhere these have a key of their own.
    private static string Outside(KeyRow r) => (r.Pad.Contains(' ') ? r.Others.Split(',')[0] : Key(r)).PadRight(6);

    private static string Key(KeyRow r) => (r.Pad.Length > 0 ? r.Pad : r.Others.Split(',')[0]).PadRight(6);

    private static string Both(KeyRow r) => Differs(r) ? $"{r.Lifting}; resting: {r.Resting}" : r.Lifting;

    private static bool Differs(KeyRow r) => r.Resting.Length > 0 && r.Resting != r.Lifting;

    private static string Or(string text) => text.Length == 0 ? "nothing" : text;
}
