using RackSide.Training.Body;

namespace RackSide.Pages.Bodies;

/// <summary>The pages of facts, each line with its source.</summary>
internal static class FactPages
{
    /// <summary>Food and water.</summary>
    public static TextPage Food { get; } = Of("FOOD AND WATER", FoodFacts.All);

    /// <summary>Sleep.</summary>
    public static TextPage Sleep { get; } = Of("SLEEP", SleepFacts.All);

    /// <summary>Supplements, which come last.</summary>
    public static TextPage Supplements { get; } = new(
        "SUPPLEMENTS",
        [
            SupplementFacts.Least,
            .. SupplementFacts.All.Select(s => $"{s.Name}: {s.Says} Limit: {s.Limit}. Ask first: {s.AskFirst}. [{s.Source}]"),
            SupplementFacts.Caution,
            BodyCautions.General,
        ]);

    private static TextPage Of(string title, IReadOnlyList<FactLine> facts) =>
        new(title, [.. facts.Select(f => $"{f.What}: {f.Says} [{f.Source}]"), BodyCautions.General, BodyCautions.AskFirst]);
}
