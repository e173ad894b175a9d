using System.Diagnostics;

namespace RackSide.Training.Safety;

/// <summary>
/// Screening before exercise in principle: current activity, known disease and symptoms decide, risk factors are not
/// counted, and the manner of clearance is left to the clinician. Source: Riebe et al. 2015, Med Sci Sports Exerc
/// 47(11):2473-2479; the principle is confirmed, the wording of the outcomes is from memory. Whitfield et al. 2017 found
/// that over half of adults of 40 and more would be sent to a clinician first, so nobody is locked out.
/// </summary>
public static class Screening
{
    /// <summary>What the three inputs advise.</summary>
    /// <param name="active">
    /// Whether at least 30 minutes of planned moderate exercise on 3 days a week were done for the last 3 months (from
    /// memory).
    /// </param>
    /// <param name="knownDisease">Known cardiovascular, metabolic or renal disease.</param>
    /// <param name="symptoms">Signs or symptoms of one, at rest or on effort.</param>
    public static ScreeningOutcome Outcome(bool active, bool knownDisease, bool symptoms) => (active, knownDisease, symptoms) switch
    {
        (false, false, false) => ScreeningOutcome.StartLight,
        (false, _, _) => ScreeningOutcome.ClearanceFirst,
        (true, _, true) => ScreeningOutcome.StopAndSeekClearance,
        (true, true, false) => ScreeningOutcome.CarryOnModerately,
        (true, false, false) => ScreeningOutcome.CarryOn,
    };

    /// <summary>
    /// What the set-up's answers advise. RackSide does not ask about current activity: its lifters are beginners, and not
    /// active is the careful half of the table. A "yes" to what makes head-down work risky counts as known disease,
    /// because a recent stroke and uncontrolled blood pressure are among it.
    /// </summary>
    /// <param name="yes">The questions answered "yes".</param>
    public static ScreeningOutcome Outcome(IReadOnlySet<SafetyTopic> yes) => Outcome(
        active: false,
        knownDisease: yes.Contains(SafetyTopic.KnownDisease) || yes.Contains(SafetyTopic.HeadDown),
        symptoms: yes.Contains(SafetyTopic.Symptoms));

    /// <summary>Whether head-down work is to be replaced by floor work. Faintness counts, because a fall is worse upside down.</summary>
    /// <param name="yes">The questions answered "yes".</param>
    public static bool AvoidInverted(IReadOnlySet<SafetyTopic> yes) =>
        yes.Contains(SafetyTopic.HeadDown) || yes.Contains(SafetyTopic.Symptoms);

    /// <summary>An outcome as one sentence to the lifter.</summary>
    public static string Sentence(ScreeningOutcome outcome) => outcome switch
    {
        ScreeningOutcome.StartLight => "Start light to moderate and build up step by step.",
        ScreeningOutcome.ClearanceFirst => "Get a clinician's clearance before you start.",
        ScreeningOutcome.CarryOn => "Carry on as you are and build up step by step.",
        ScreeningOutcome.CarryOnModerately =>
            "Moderate training may go on; for hard training have a clinician's clearance from the last 12 months.",
        ScreeningOutcome.StopAndSeekClearance => "Stop training and get a clinician's clearance.",
        _ => throw new UnreachableException(),
    };
}
