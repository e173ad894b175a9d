namespace RackSide.Training.Safety;

/// <summary>One question of the set-up, and what is said to a "yes". A "yes" brings advice and never locks anybody out.</summary>
/// <param name="Topic">What it asks about.</param>
/// <param name="Text">What may be true of the lifter, in plain words.</param>
/// <param name="Advice">What is said to a "yes".</param>
public sealed record SafetyQuestion(SafetyTopic Topic, string Text, string Advice)
{
    /// <summary>
    /// The questions, in the order asked. The words are our own; what they ask after is the principle of Riebe et al.
    /// 2015 (see <see cref="Screening"/>) and, for head-down work, Baskaran et al. 2006, Ophthalmology 113:1327-1332
    /// (eye pressure doubled in a headstand). The advice on breathing: MacDougall et al. 1985, J Appl Physiol 58:785-790,
    /// and Nery et al. 2010, Clinics 65:271-277. Under 18: AAP 2020, Pediatrics 145(6):e20201011, from memory.
    /// </summary>
    public static IReadOnlyList<SafetyQuestion> All { get; } =
    [
        new(
            SafetyTopic.KnownDisease,
            "heart or circulation trouble, diabetes or another metabolic disease, kidney disease",
            "Ask a clinician how hard you may train before you start. With high blood pressure: no maximal set and no set "
            + "to failure until you are cleared. Breathe out through the hard part of every rep."),
        new(
            SafetyTopic.Symptoms,
            "chest pain, faintness or unusual shortness of breath on effort or at rest",
            "These want looking at before you train: see a clinician. If one comes and does not settle in minutes, or is "
            + "severe, call the emergency services. Head-down holds are replaced by floor work."),
        new(
            SafetyTopic.JointsAndBack,
            "joint, back or bone trouble, or an operation in the last six months",
            "Ask the clinician who knows it which movements to leave out. Every slot has other exercises: choose one that "
            + "is free of pain, begin light, and stop at sharp pain or numbness."),
        new(
            SafetyTopic.HeadDown,
            "pregnant; or glaucoma, retina or neck trouble, high blood pressure out of control, recent stroke or head injury",
            "Head-down holds are replaced by floor work. Ask the clinician who looks after you before you lift, and again "
            + "before you go upside down."),
        new(
            SafetyTopic.Under18,
            "under 18 years old",
            "RackSide is written for adults. Train only with a qualified coach in the room: technique first, and no maximal "
            + "attempts."),
    ];

    /// <summary>The question of that topic.</summary>
    public static SafetyQuestion Of(SafetyTopic topic) => All.First(q => q.Topic == topic);
}
