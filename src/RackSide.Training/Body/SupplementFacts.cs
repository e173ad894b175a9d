namespace RackSide.Training.Body;

/// <summary>A supplement: what it may do, how much is too much, and who asks first.</summary>
/// <param name="Name">Its name; no product has one here.</param>
/// <param name="Says">What the evidence says.</param>
/// <param name="Limit">The upper level, or how much is known to do no harm.</param>
/// <param name="AskFirst">Who asks a clinician first.</param>
/// <param name="Source">Who says so, and how sure that is here.</param>
public sealed record SupplementFact(string Name, string Says, string Limit, string AskFirst, string Source);

/// <summary>The page of facts on supplements: short, because they matter least.</summary>
public static class SupplementFacts
{
    /// <summary>The upper level of vitamin D, micrograms a day: 4000 IU. EFSA J 2012;10(7):2813 and 2023 (seen).</summary>
    public const int VitaminDMicrograms = 100;

    /// <summary>International units of vitamin D in a microgram.</summary>
    public const int VitaminDUnitsPerMicrogram = 40;

    /// <summary>Said before the list.</summary>
    public const string Least =
        "Supplements come last: training, food and sleep do nearly all of it, and nobody needs any of these to grow stronger.";

    /// <summary>Said after it.</summary>
    public const string Caution =
        "More than the upper level is not better. Look for testing by a third party. Under 18, pregnant or nursing, with kidney, liver or "
        + "heart trouble, or with regular medicines: ask a clinician or pharmacist first.";

    /// <summary>The list.</summary>
    public static IReadOnlyList<SupplementFact> All { get; } =
    [
        new("creatine monohydrate",
            "The one with good evidence for strength: 3 to 5 g a day, at any hour; loading is not needed. The first weeks bring a kilogram or "
            + "so of water.",
            "no harm seen in healthy people at up to 30 g a day for five years",
            "kidney trouble; labels advise against it under 18",
            "Kreider 2017 (second-hand; the safety seen)"),
        new("vitamin D",
            "Sun on the skin makes it; in a dark winter, or always indoors, a low dose may be sensible. A blood test tells.",
            $"{VitaminDMicrograms} µg ({VitaminDMicrograms * VitaminDUnitsPerMicrogram} IU) a day in all",
            "kidney stones, high calcium, sarcoidosis",
            "EFSA 2012 and 2023 (seen); IOM 2011 (from memory)"),
        new("omega-3 (EPA and DHA)",
            "Two meals of oily fish a week do the same; no clear effect on strength.",
            "up to 5 g a day raised no concern; no upper level is set",
            "blood thinners, or an operation ahead",
            "EFSA 2012, 10(7):2815 (seen)"),
        new("multivitamin",
            "Fills gaps of a narrow diet; with a varied one it changes nothing that can be measured in training.",
            "one day's dose; vitamin A and iron are harmful in excess",
            "pregnancy (vitamin A), iron overload",
            "common practice"),
        new("probiotics, fermented food",
            "Yoghurt, kefir, sauerkraut are food; for training nothing is shown.",
            "none known for food",
            "a weakened immune system",
            "common practice"),
    ];
}
