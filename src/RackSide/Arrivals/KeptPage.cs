using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Settings;

namespace RackSide.Arrivals;

/// <summary>A first page that was drawn beforehand.</summary>
/// <param name="Shown">The page.</param>
/// <param name="Look">How it is painted.</param>
/// <param name="From">The first moment of which it is right.</param>
/// <param name="Until">The first moment of which it is not.</param>
internal sealed record KeptPage(Page Shown, Appearance Look, Instant From, Instant Until)
{
    /// <summary>Whether it is right at a moment, as far as a clock can tell.</summary>
    public bool Holds(Instant now) => From <= now && now < Until;
}
