namespace RackSide.Pages.SetUps;

/// <summary>The pages of the set-up, in order.</summary>
public enum SetUpPage
{
    /// <summary>What this is, and the cautions.</summary>
    Welcome,

    /// <summary>Who trains here.</summary>
    Name,

    /// <summary>Kilograms or pounds.</summary>
    Unit,

    /// <summary>Which bar.</summary>
    Bar,

    /// <summary>How many pairs of each plate.</summary>
    Plates,

    /// <summary>What else the gym owns.</summary>
    OtherKit,

    /// <summary>Which weekdays.</summary>
    Days,

    /// <summary>The safety questions.</summary>
    Safety,

    /// <summary>The advice to a safety question answered "yes"; one page each, none where all were answered "no".</summary>
    Advice,

    /// <summary>What was set up.</summary>
    Done,
}
