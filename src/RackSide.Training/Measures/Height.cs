using System.Globalization;

namespace RackSide.Training.Measures;

/// <summary>How tall somebody stands, in the unit it was told in; never converted on the way in.</summary>
/// <param name="Amount">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Centimetres, or inches in all.</param>
public readonly record struct Height(decimal Amount, LengthUnit Unit)
{
    /// <summary>Centimetres in an inch. Source: the 1959 international yard and pound agreement; NIST SP 811, appendix B.</summary>
    public const decimal CentimetresPerInch = 2.54m;

    private const int InchesPerFoot = 12;

    /// <summary>A height of that many centimetres.</summary>
    public static Height Cm(decimal amount) => new(amount, LengthUnit.Centimetre);

    /// <summary>A height of feet and inches.</summary>
    public static Height Feet(int feet, decimal inches) => new((feet * InchesPerFoot) + inches, LengthUnit.Inch);

    /// <summary>The same in centimetres, exact.</summary>
    public decimal Centimetres => Unit == LengthUnit.Centimetre ? Amount : Amount * CentimetresPerInch;

    /// <summary><c>178 cm</c>, or <c>5 ft 10 in</c>.</summary>
    public override string ToString() => Unit == LengthUnit.Centimetre
        ? $"{Number(Amount)} cm"
        : $"{Number(decimal.Truncate(Amount / InchesPerFoot))} ft {Number(Amount % InchesPerFoot)} in";

    private static string Number(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
