using System.Diagnostics;
using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>
/// Physical activity level: a day's need as a multiple of the need at rest. FAO/WHO/UNU, Human energy requirements, Rome
/// 2001 (FAO 2004), table 5.3: light 1.40-1.69, active 1.70-1.99, vigorous 2.00-2.40; the middle of each is taken. The
/// multipliers 1.2 to 1.9 that circulate have no primary source and are not used.
/// </summary>
public static class ActivityFactor
{
    /// <summary>The middle of a level.</summary>
    public static decimal Of(DailyActivity activity) => activity switch
    {
        DailyActivity.Light => 1.55m,
        DailyActivity.Active => 1.85m,
        DailyActivity.Vigorous => 2.20m,
        _ => throw new UnreachableException(),
    };

    /// <summary>The class of the estimated energy requirement that a level falls in, from 0 (inactive) to 3 (very active).</summary>
    /// <remarks>NASEM 2023: 1.00 to under 1.53, to under 1.68, to under 1.85, to under 2.50.</remarks>
    public static int RequirementClass(decimal level) => level < 1.53m ? 0 : level < 1.68m ? 1 : level < 1.85m ? 2 : 3;
}
