namespace RackSide.Files;

/// <summary>Where a rule or a formula comes from.</summary>
/// <param name="Says">The rule in a line.</param>
/// <param name="Codes">The reason codes of prescriptions that it speaks with; most rules have none.</param>
/// <param name="Where">The files it stands in, or the member of an enum.</param>
/// <param name="Source">Who says so; <c>none</c> where nobody does.</param>
/// <param name="Status">How sure that is: seen, second-hand, from memory, practice or ours.</param>
/// <param name="Tests">The tests that hold it.</param>
public sealed record RuleSource(
    string Says, IReadOnlyList<string> Codes, IReadOnlyList<string> Where, string Source, string Status, IReadOnlyList<string> Tests);

/// <summary>Rules of one kind, under one heading.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Note">What is said before them, or null.</param>
/// <param name="Rules">The rules.</param>
/// <param name="After">What is said after them, or null.</param>
public sealed record RuleGroup(string Title, string? Note, IReadOnlyList<RuleSource> Rules, string? After);

/// <summary>All rules with their sources.</summary>
/// <param name="Groups">By kind, in the order shown.</param>
public sealed record RuleSources(IReadOnlyList<RuleGroup> Groups)
{
    /// <summary>The rule that speaks with a reason code; null where none does, as with a code of an older version.</summary>
    public RuleSource? Of(string code) => Groups.SelectMany(g => g.Rules).FirstOrDefault(r => r.Codes.Contains(code));
}
