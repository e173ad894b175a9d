using NodaTime;
using RackSide.Training.History;

namespace RackSide.Pages.Calendars;

/// <summary>What was said on the page of days away.</summary>
public abstract record AwayChoice
{
    private AwayChoice()
    {
    }

    /// <summary>Nothing; back.</summary>
    public sealed record Leave : AwayChoice;

    /// <summary>Days away.</summary>
    /// <param name="From">The first.</param>
    /// <param name="Until">The last; null while nobody knows.</param>
    /// <param name="For">Why.</param>
    public sealed record Tell(LocalDate From, LocalDate? Until, AwayFor For) : AwayChoice;

    /// <summary>Back again: the days away that hold today ended yesterday.</summary>
    public sealed record BackAgain : AwayChoice;

    /// <summary>Days away to be taken back.</summary>
    /// <param name="Away">Which.</param>
    public sealed record TakeBack(AwayTold Away) : AwayChoice;
}
