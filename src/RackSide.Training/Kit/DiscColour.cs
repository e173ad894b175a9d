using RackSide.Training.Measures;

namespace RackSide.Training.Kit;

/// <summary>A disc colour of the lifting federations.</summary>
public enum DiscColour
{
    /// <summary>25 kg.</summary>
    Red,

    /// <summary>20 kg.</summary>
    Blue,

    /// <summary>15 kg.</summary>
    Yellow,

    /// <summary>10 kg.</summary>
    Green,
}

/// <summary>
/// The colours that the open discipline standards give to discs. 25, 20 and 15 kg are alike in both (IWF TCRR 3.3; IPF
/// rules, bars and discs); 10 kg is green by the IWF and of any colour by the IPF. Under 10 kg the two do not agree, and no
/// standard here colours plates in pounds, so those have none.
/// </summary>
public static class DiscColours
{
    /// <summary>The colour of a disc, or null where the standards give it none.</summary>
    public static DiscColour? Of(Mass disc) => (disc.Unit, disc.Amount) switch
    {
        (MassUnit.Kilogram, 25) => DiscColour.Red,
        (MassUnit.Kilogram, 20) => DiscColour.Blue,
        (MassUnit.Kilogram, 15) => DiscColour.Yellow,
        (MassUnit.Kilogram, 10) => DiscColour.Green,
        _ => null,
    };
}
