namespace RackSide.Training.Measures;

/// <summary>The unit a mass was loaded in. It is kept with the number and never converted on the way in.</summary>
public enum MassUnit
{
    /// <summary>Kilogram, UCUM <c>kg</c>.</summary>
    Kilogram,

    /// <summary>International avoirdupois pound, UCUM <c>[lb_av]</c>; exactly 0.45359237 kg.</summary>
    Pound,
}
