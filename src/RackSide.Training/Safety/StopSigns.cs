namespace RackSide.Training.Safety;

/// <summary>
/// The signs to stop at, one key away from every page. They are the usual list of exercise guidance, from memory, in our
/// own words.
/// </summary>
public static class StopSigns
{
    /// <summary>The signs; each fits a line of 46.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "pain or pressure in chest, neck, jaw or arm",
        "faintness or dizziness",
        "breathlessness out of proportion to the work",
        "a racing or uneven heartbeat",
        "sudden severe headache, or sight that changes",
        "weakness on one side of the body",
        "sharp pain in a joint or the back; numbness",
        "dark urine after hard training: doctor today",
    ];

    /// <summary>The same in one breath, for a page that has room for little else.</summary>
    public const string Brief =
        "chest, neck, jaw or arm pain; faintness; breathlessness out of proportion; uneven heartbeat; sudden headache or sight "
        + "changing; one-sided weakness; sharp joint or back pain; numbness";

    /// <summary>What to do at any of them.</summary>
    public static IReadOnlyList<string> WhatToDo { get; } =
    [
        "Stop. If it does not settle in minutes, or is severe, call the emergency services.",
        "Then see a clinician before you train again.",
    ];
}
