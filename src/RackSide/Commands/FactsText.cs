using RackSide.Training.Body;

namespace RackSide.Commands;

/// <summary>The pages of facts as plain lines.</summary>
internal static class FactsText
{
    /// <summary>The lines of a page.</summary>
    /// <exception cref="Refusal">There is no such page.</exception>
    public static IEnumerable<string> Of(string what) => what.ToLowerInvariant() switch
    {
        "food" => [.. Facts(FoodFacts.All), .. Cautions()],
        "sleep" => [.. Facts(SleepFacts.All), .. Cautions()],
        "supplements" => [.. PlainText.Wrap(SupplementFacts.Least), .. SupplementFacts.All.SelectMany(Supplement), "", .. PlainText.Wrap(SupplementFacts.Caution), .. Cautions()],
        _ => throw new Refusal(ExitCode.Usage, $"--facts: \"{what}\" is no page; write food, sleep or supplements"),
    };

    private static IEnumerable<string> Facts(IEnumerable<FactLine> facts) => facts.SelectMany((fact, i) =>
        (IEnumerable<string>)[.. i == 0 ? [] : new[] { "" }, fact.What, .. PlainText.Wrap(fact.Says, 2), .. PlainText.Wrap($"source: {fact.Source}", 2)]);

    private static IEnumerable<string> Supplement(SupplementFact fact) =>
    [
        "",
        fact.Name,
        .. PlainText.Wrap(fact.Says, 2),
        .. PlainText.Wrap($"limit: {fact.Limit}", 2),
        .. PlainText.Wrap($"ask first: {fact.AskFirst}", 2),
        .. PlainText.Wrap($"source: {fact.Source}", 2),
    ];

    private static IEnumerable<string> Cautions() => ["", .. PlainText.Wrap(BodyCautions.General), .. PlainText.Wrap(BodyCautions.AskFirst)];
}
