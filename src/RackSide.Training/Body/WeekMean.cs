using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Training.Body;

/// <summary>
/// Body weight by whole weeks. One morning says little: a reading scatters by about 0.4 kg and swings within the week
/// (Turicchi 2020, Orsama 2014), so weeks are compared, never days.
/// </summary>
public static class WeekMean
{
    /// <summary>The plain mean of the weigh-ins of an ISO week, in the unit asked for; null where there is none.</summary>
    public static Mass? Of(IReadOnlyList<WeighIn> weighIns, IsoWeek week, MassUnit unit)
    {
        var readings = weighIns.Where(w => week.Holds(w.Date)).Select(w => w.Weight.In(unit)).ToList();
        return readings.Count == 0 ? null : new Mass(readings.Average(), unit);
    }
}
