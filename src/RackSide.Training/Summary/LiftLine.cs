using RackSide.Training.Measures;

namespace RackSide.Training.Summary;

/// <summary>One loaded exercise of the next strength day: where it began, where it is, where it goes.</summary>
/// <param name="Slot">The slot's key.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Name">Its short name.</param>
/// <param name="Began">The load of the first time ever; null where it was never done.</param>
/// <param name="Now">The load most sets used the last time; null where it was never done.</param>
/// <param name="Next">The load of the next strength day.</param>
/// <param name="Word">What happens next: <c>up</c>, <c>same</c>, <c>lighter</c>, <c>new</c>, or how many misses: <c>2 misses</c>.</param>
/// <param name="Misses">Misses in a row at the load now.</param>
public sealed record LiftLine(
    string Slot, string Exercise, string Name, Mass? Began, Mass? Now, Mass Next, string Word, int Misses)
{
    /// <summary>It gets harder; with help that means less of it.</summary>
    public const string Up = "up";

    /// <summary>The load stays.</summary>
    public const string Same = "same";

    /// <summary>It gets easier.</summary>
    public const string Lighter = "lighter";

    /// <summary>It was never done before.</summary>
    public const string New = "new";
}
