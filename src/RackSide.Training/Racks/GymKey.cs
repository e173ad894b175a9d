using System.Globalization;
using RackSide.Training.History;

namespace RackSide.Training.Racks;

/// <summary>
/// A lifter's key in a gym of several racks. A rack alone calls its first lifter what every rack does, so the moment of joining
/// is added: who has the same key and joined at the same moment is the same person, from a record or a backup of one rack on
/// another; and two who are only called alike stay two.
/// </summary>
public static class GymKey
{
    /// <summary>The key of a lifter in a gym; one that has it already keeps it.</summary>
    public static string Of(Lifter lifter)
    {
        var moment = "-" + lifter.Joined.ToUnixTimeTicks().ToString("x", CultureInfo.InvariantCulture);
        return lifter.Key.EndsWith(moment, StringComparison.Ordinal) ? lifter.Key : lifter.Key + moment;
    }
}
