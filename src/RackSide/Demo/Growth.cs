namespace RackSide.Demo;

/// <summary>
/// A quantity that training brings from a start towards a ceiling, fast at first and ever slower: after <see cref="Pace"/>
/// days about two thirds of the way are done. The shape is common practice, no source; the numbers are invented.
/// </summary>
/// <param name="Start">On the first day.</param>
/// <param name="Ceiling">What it never quite reaches.</param>
internal readonly record struct Growth(double Start, double Ceiling)
{
    private const double Pace = 60;

    /// <summary>The quantity after so many days.</summary>
    public double After(int days) => Ceiling - ((Ceiling - Start) * Math.Exp(-days / Pace));
}
