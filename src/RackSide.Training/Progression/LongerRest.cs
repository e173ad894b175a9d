using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Training.Progression;

/// <summary>
/// The first remedy offered after a miss: a longer rest, before anything is taken off the bar. Three minutes between the
/// sets of the large lifts, two for single-joint arm work (ACSM 2009: 2-3 min and 1-2 min, from memory; Schoenfeld et al.
/// 2016, JSCR 30(7):1805-1812: 3 min over 1; later reviews find no clear effect on size). It is offered, and the plan's
/// rest stays. Nothing is offered for holds, and where the plan rests as long already.
/// </summary>
internal static class LongerRest
{
    /// <summary>The offer in words, or null for none.</summary>
    public static string? For(Slot slot, Exercise exercise)
    {
        var minutes = exercise.Motion is Motion.ElbowFlexion or Motion.ElbowExtension ? 2 : 3;
        return slot.Scheme is Scheme.Fixed or Scheme.Range && slot.Rest < Duration.FromMinutes(minutes)
            ? string.Create(CultureInfo.InvariantCulture, $"rest longer first: {minutes} min between sets")
            : null;
    }
}
