namespace RackSide.Pages.Bodies;

/// <summary>What follows the page of the body.</summary>
public enum BodyChoice
{
    /// <summary>Back to where it was opened.</summary>
    Back,

    /// <summary>A check-in.</summary>
    CheckIn,

    /// <summary>What the formulas want to know.</summary>
    Profile,
}
