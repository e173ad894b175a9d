namespace RackSide.Training.Exercises;

/// <summary>Muscles as people speak of them.</summary>
public enum MuscleGroup
{
    /// <summary>The front of the thigh.</summary>
    Quadriceps,

    /// <summary>The buttocks.</summary>
    Glutes,

    /// <summary>The back of the thigh.</summary>
    Hamstrings,

    /// <summary>The inner thigh.</summary>
    InnerThighs,

    /// <summary>Calves and shins.</summary>
    LowerLegs,

    /// <summary>The back above the waist: what rows and pull-ups train.</summary>
    Back,

    /// <summary>The extensors of the spine.</summary>
    LowerBack,

    /// <summary>The chest.</summary>
    Chest,

    /// <summary>The shoulders, with what moves the shoulder blade forward and turns the arm.</summary>
    Shoulders,

    /// <summary>What bends the elbow.</summary>
    Biceps,

    /// <summary>What straightens the elbow.</summary>
    Triceps,

    /// <summary>Wrist and fingers.</summary>
    Forearms,

    /// <summary>The trunk's front and sides, and what lifts the thigh.</summary>
    Core,
}

/// <summary>The groups of the anatomical names that exercises use.</summary>
public static class MuscleGroups
{
    /// <summary>The group of a muscle.</summary>
    /// <param name="muscle">Its English anatomical name, as in <see cref="Exercise.Muscles"/>.</param>
    /// <returns>Null for a muscle nobody has put in a group yet.</returns>
    public static MuscleGroup? Of(string muscle) => muscle switch
    {
        "quadriceps femoris" => MuscleGroup.Quadriceps,
        "gluteus maximus" or "gluteus medius" => MuscleGroup.Glutes,
        "hamstrings" => MuscleGroup.Hamstrings,
        "adductor magnus" => MuscleGroup.InnerThighs,
        "gastrocnemius" or "soleus" or "tibialis anterior" => MuscleGroup.LowerLegs,
        "latissimus dorsi" or "rhomboids" or "trapezius" or "trapezius lower part" or "teres major" => MuscleGroup.Back,
        "erector spinae" => MuscleGroup.LowerBack,
        "pectoralis major" or "pectoralis major clavicular part" => MuscleGroup.Chest,
        "deltoid" or "anterior deltoid" or "middle deltoid" or "posterior deltoid"
            or "serratus anterior" or "supraspinatus" or "infraspinatus" => MuscleGroup.Shoulders,
        "biceps brachii" or "brachialis" => MuscleGroup.Biceps,
        "triceps brachii" or "triceps brachii long head" => MuscleGroup.Triceps,
        "brachioradialis" or "finger flexors" or "wrist flexors" or "wrist extensors" => MuscleGroup.Forearms,
        "rectus abdominis" or "transversus abdominis" or "external oblique" or "internal oblique"
            or "quadratus lumborum" or "hip flexors" => MuscleGroup.Core,
        _ => null,
    };

    /// <summary>The group's name: <c>quadriceps</c>, <c>lower back</c>.</summary>
    public static string Name(this MuscleGroup group) => group switch
    {
        MuscleGroup.InnerThighs => "inner thighs",
        MuscleGroup.LowerLegs => "lower legs",
        MuscleGroup.LowerBack => "lower back",
        _ => group.ToString().ToLowerInvariant(),
    };

    /// <summary>The group an exercise is done for: that of the muscle it names first; null where it names none.</summary>
    public static MuscleGroup? Direct(this Exercise exercise) => exercise.Muscles.Count > 0 ? Of(exercise.Muscles[0]) : null;

    /// <summary>The other groups an exercise trains besides, each once.</summary>
    public static IEnumerable<MuscleGroup> Indirect(this Exercise exercise) =>
        exercise.Muscles.Select(Of).OfType<MuscleGroup>().Distinct().Where(g => g != exercise.Direct());
}
