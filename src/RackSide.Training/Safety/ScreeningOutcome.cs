namespace RackSide.Training.Safety;

/// <summary>What screening advises. All of them are advice; how clearance is given is the clinician's affair.</summary>
public enum ScreeningOutcome
{
    /// <summary>Not active, nothing known, no symptoms: start light to moderate and build up.</summary>
    StartLight,

    /// <summary>Not active, and a known disease or symptoms: clearance before starting.</summary>
    ClearanceFirst,

    /// <summary>Active, nothing known, no symptoms: carry on and progress.</summary>
    CarryOn,

    /// <summary>Active with a known disease, no symptoms: moderate goes on, vigorous wants clearance within 12 months.</summary>
    CarryOnModerately,

    /// <summary>Active with symptoms: stop, and seek clearance.</summary>
    StopAndSeekClearance,
}
