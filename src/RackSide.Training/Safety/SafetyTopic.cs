namespace RackSide.Training.Safety;

/// <summary>What a safety question asks about. An answer lives only as long as the set-up; none is stored.</summary>
public enum SafetyTopic
{
    /// <summary>A known disease of heart and circulation, metabolism or kidneys.</summary>
    KnownDisease,

    /// <summary>Signs that the heart or the circulation may be in trouble.</summary>
    Symptoms,

    /// <summary>Joints, back, bones, or recent surgery.</summary>
    JointsAndBack,

    /// <summary>What makes work with the head below the heart risky.</summary>
    HeadDown,

    /// <summary>Not grown up.</summary>
    Under18,
}
