namespace RackSide.Training.Body;

/// <summary>The page of facts on sleep.</summary>
public static class SleepFacts
{
    /// <summary>The facts, what matters most first.</summary>
    public static IReadOnlyList<FactLine> All { get; } =
    [
        new("how long",
            "Grown-ups want 7 hours or more, most of them 7 to 9. RackSide's aim is 7 h 30 and its floor 6 h: under that, strength and "
            + "muscle come slowly whatever is lifted and eaten.",
            "Watson 2015 (seen); Hirshkowitz 2015 (from memory); the floor: common practice"),
        new("when",
            "The same rising time every day sets the clock; the bedtime follows from it: 7 h 30 and a quarter of an hour before.",
            "common practice"),
        new("what helps",
            "A dark, cool, quiet room; no coffee in the eight hours before; screens away in the last one. Hard training late keeps some "
            + "awake and others not.",
            "common practice"),
        new("a bad night",
            "One costs little: train, stop a rep earlier, and sleep the next. Several in a row cost more than a missed session.",
            "common practice"),
        new("see a clinician",
            "Loud snoring with pauses, falling asleep in the day, or weeks of lying awake are things a doctor can help with.",
            "common practice"),
    ];
}
