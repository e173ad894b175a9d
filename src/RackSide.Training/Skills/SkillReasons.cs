namespace RackSide.Training.Skills;

/// <summary>The codes of the reasons that ladders give besides those of Progression; docs/sources.md lists them with their rules.</summary>
public static class SkillReasons
{
    /// <summary>Every hold or set clean at the rung's most: the next rung, at half.</summary>
    public const string NextRung = "next-rung";

    /// <summary>A hold or set more than 30 per cent short: the same again.</summary>
    public const string FarShort = "far-short";

    /// <summary>More than 30 per cent short twice running: a step back, within the rung or to the one before.</summary>
    public const string StepBack = "step-back";

    /// <summary>The rung is not open today, for want of kit or because head-down work is left out: the nearest easier one.</summary>
    public const string EasierRung = "easier-rung";

    /// <summary>Drawn by play: another variant of the same motion, for variety.</summary>
    public const string Play = "play";
}
