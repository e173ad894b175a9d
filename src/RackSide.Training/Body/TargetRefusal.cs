using NodaTime;
using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>What is a reason for no targets. It is asked, answered and forgotten; only that there is one is kept.</summary>
public enum NoTargetsFor
{
    /// <summary>Pregnant or nursing.</summary>
    Pregnancy,

    /// <summary>An eating disorder, now or earlier.</summary>
    EatingDisorder,

    /// <summary>Something else that a clinician looks after.</summary>
    Other,
}

/// <summary>Where RackSide sets no targets for food and gives no verdict on weight, and whom to ask instead.</summary>
public static class TargetRefusal
{
    /// <summary>From this age on. The formulas are of adults; a growing body is a clinician's matter.</summary>
    public const int Grown = 18;

    /// <summary>Said to somebody under 18.</summary>
    public const string TooYoung =
        "No targets under 18: a body that grows needs food and sleep, not numbers. Ask a paediatrician or a dietitian.";

    /// <summary>Said where a reason was told, whichever.</summary>
    public const string Told =
        "No targets, because a reason was told. Ask the doctor, midwife or dietitian who looks after you; RackSide keeps to the training.";

    /// <summary>Why no targets are set, in one sentence with whom to ask; null where they may be.</summary>
    /// <param name="profile">What was told.</param>
    /// <param name="today">The date.</param>
    public static string? For(BodyProfile profile, LocalDate today) =>
        profile.AgeOn(today) < Grown ? TooYoung : profile.NoTargets ? Told : null;

    /// <summary>What is said at once to a reason that is told.</summary>
    public static string Of(NoTargetsFor reason) => reason switch
    {
        NoTargetsFor.Pregnancy =>
            "No targets while pregnant or nursing: the formulas do not hold then. Ask your midwife or doctor what to eat, and how to train.",
        NoTargetsFor.EatingDisorder =>
            "No targets and no verdicts on weight. Ask the people who treat you, or a doctor, before you count or weigh anything; "
            + "all of this can be hidden.",
        _ => "No targets then. Ask the clinician who looks after you; a dietitian can set what RackSide cannot.",
    };
}
