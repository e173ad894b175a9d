namespace RackSide.Training.Safety;

/// <summary>What is said before anything else. Common practice, our own words.</summary>
public static class Cautions
{
    /// <summary>The cautions, the one that rules people out first.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "For adults, 18 and over. General information for healthy people, not medical advice.",
        "Talk to a clinician first if you are pregnant or nursing, have heart, blood-pressure, kidney, diabetes or joint "
        + "trouble, take regular medicines, or are not sure.",
        "Learn the lifts from a qualified coach. A screen cannot see you: form and pain outrank the plan.",
    ];
}
