namespace RackSide.Training.Measures;

/// <summary>The unit a height was told in.</summary>
public enum LengthUnit
{
    /// <summary>Centimetre, UCUM <c>cm</c>.</summary>
    Centimetre,

    /// <summary>International inch, UCUM <c>[in_i]</c>; exactly 2.54 cm. Shown as feet and inches.</summary>
    Inch,
}
