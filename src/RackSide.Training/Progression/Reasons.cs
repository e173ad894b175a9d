namespace RackSide.Training.Progression;

/// <summary>The codes of the reasons a load or target is what it is; docs/sources.md lists them with their rules.</summary>
public static class Reasons
{
    /// <summary>Never done before: begin light.</summary>
    public const string FirstTime = "first-time";

    /// <summary>Never done before: the load that the search of the session found.</summary>
    public const string FirstLoadFound = "first-load-found";

    /// <summary>Never done here: begun from a set the lifter knows.</summary>
    public const string KnownSet = "known-set";

    /// <summary>Every set met its target with honest form: one step harder.</summary>
    public const string AllMet = "all-met";

    /// <summary>Every set reached the top of the range: one step harder, from the bottom of the range.</summary>
    public const string TopOfRange = "top-of-range";

    /// <summary>Within the range: the same load, one rep more.</summary>
    public const string OneRepMore = "one-rep-more";

    /// <summary>All holds clean: some seconds more.</summary>
    public const string LongerHold = "longer-hold";

    /// <summary>The plan's longest hold is reached.</summary>
    public const string LongestHold = "longest-hold";

    /// <summary>A set fell short: the same again.</summary>
    public const string Miss = "miss";

    /// <summary>As many misses in a row at one load as the plan allows: lighter.</summary>
    public const string ThirdMiss = "third-miss";

    /// <summary>A set's form slipped: the same again, and no miss is counted.</summary>
    public const string FormSlipped = "form-slipped";

    /// <summary>The form slipped two times running: the same again, with the cue card.</summary>
    public const string FormSlippedAgain = "form-slipped-again";

    /// <summary>Sets were left out, none was missed: the same again, and no miss is counted.</summary>
    public const string CutShort = "cut-short";

    /// <summary>Not all sets were done at one load: the load most sets used again.</summary>
    public const string MixedLoads = "mixed-loads";

    /// <summary>A harder load was earned, but the kit has none.</summary>
    public const string KitIsSpent = "kit-is-spent";

    /// <summary>More than a week since the last time: the last load again.</summary>
    public const string ShortGap = "short-gap";

    /// <summary>More than two weeks since the last time: lighter.</summary>
    public const string LayOff = "lay-off";

    /// <summary>The next load is over ten per cent heavier: extra reps first.</summary>
    public const string RepsFirst = "reps-first";

    /// <summary>Two reps over in the last set of two sessions running: one step harder.</summary>
    public const string TwoForTwo = "two-for-two";

    /// <summary>Two reps over in the last set, once: the same load, and once more.</summary>
    public const string TwoOverOnce = "two-over-once";

    /// <summary>The goal met, and not two reps over: the same load.</summary>
    public const string GoalMet = "goal-met";

    /// <summary>The total done: some reps more in all.</summary>
    public const string GrowTotal = "grow-total";

    /// <summary>The plan's largest total is reached.</summary>
    public const string LargestTotal = "largest-total";

    /// <summary>More than a week since the exercise itself, its motion trained otherwise: the last load again.</summary>
    public const string OtherExercise = "other-exercise";

    /// <summary>An illness told since the last time: the last load again.</summary>
    public const string AfterIllness = "after-illness";

    /// <summary>Back from more than eight weeks: a step each session up to the old load.</summary>
    public const string ClimbBack = "climb-back";

    /// <summary>The motion was told sore: lighter until a session of it was honest.</summary>
    public const string Sore = "sore";

    /// <summary>Main lifts stalled together: a week of half the sets, lighter.</summary>
    public const string LightWeek = "light-week";

    /// <summary>Nothing is counted up here.</summary>
    public const string Unchanged = "unchanged";
}
