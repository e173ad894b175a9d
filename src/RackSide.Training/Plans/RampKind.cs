namespace RackSide.Training.Plans;

/// <summary>How a slot's warm-up sets lead to the first working set.</summary>
public enum RampKind
{
    /// <summary>No warm-up sets.</summary>
    None,

    /// <summary>For a lift whose joints are warm already: two steps at most.</summary>
    Short,

    /// <summary>From the empty bar.</summary>
    Full,
}
