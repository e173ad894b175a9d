namespace RackSide.Training.Safety;

/// <summary>
/// What is asked and taught before the first hold with the head below the heart. The list follows what raises the risk when
/// pressure rises in the head (Baskaran et al. 2006, Ophthalmology 113:1327-1332; Jasien et al. 2015, PLoS One 10:e0144505)
/// or when somebody falls; the way down is common practice, no source. The words are our own.
/// </summary>
public static class WayDown
{
    /// <summary>The question.</summary>
    public const string Question = "Is any of these so? Nothing of it is kept but whether you stay on the floor.";

    /// <summary>What speaks against head-down work.</summary>
    public static IReadOnlyList<string> Against { get; } =
    [
        "pregnant; or glaucoma or retina trouble",
        "blood pressure out of control",
        "a stroke or a head injury not long ago",
        "neck trouble; dizziness or faintness",
        "a full stomach, today",
    ];

    /// <summary>The way down, learned before the way up.</summary>
    public static IReadOnlyList<string> Steps { get; } =
    [
        "A bell rings five seconds before the target: come down then, with strength in hand.",
        "Walk the hands out and the feet down the wall, then knees to the floor.",
        "If you tip over: turn to the side and step down, one foot first. Never drop.",
        "Rest a breath on your knees before you stand up.",
    ];

    /// <summary>When to come down at once.</summary>
    public const string StopIf = "Down at once for wrist or neck pain, pressure in the head, or spots before the eyes.";
}
