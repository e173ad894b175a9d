using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;

namespace RackSide.Training.Planning;

/// <summary>What today asks for: the calendar, the loads and their reasons in one value.</summary>
/// <param name="Due">The calendar's answer.</param>
/// <param name="Day">The training day; null on a rest day and when today is done.</param>
/// <param name="Prescriptions">In the order of the day's slots; empty without a day.</param>
/// <param name="Estimate">How long it takes in all; zero without a day.</param>
/// <param name="PlatesNeeded">
/// The plates one side of the bar needs at the busiest moment of each, heaviest first, equal ones repeated; as many again
/// are needed for the other side.
/// </param>
public sealed record TodaysPlan(
    DayDue Due,
    TrainingDay? Day,
    IReadOnlyList<Prescription> Prescriptions,
    Duration Estimate,
    IReadOnlyList<Mass> PlatesNeeded)
{
    /// <summary>What is left out for want of time, in order; it is kept with the session as left out.</summary>
    public IReadOnlyList<Prescription> NoTimeFor { get; init; } = [];

    /// <summary>Whether it was made shorter.</summary>
    public bool Trimmed => NoTimeFor.Count > 0 || Prescriptions.Any(p => p.SetsLeftOut > 0);

    /// <summary>Where an exercise stands in for the one the plan prefers, in the order of the slots; those without one among them.</summary>
    public IReadOnlyList<StandIn> StandIns { get; init; } = [];

    /// <summary>A sentence for each slot that no exercise of this kit can fill, and that is left out for it; and what is left out for want of time.</summary>
    public IReadOnlyList<string> LeftOut { get; init; } = [];

    /// <summary>The head of a session of this day, with all that it asks for, also what there is no time for.</summary>
    /// <param name="id">The identity of its beginning.</param>
    /// <param name="begun">When it begins.</param>
    /// <param name="date">The day it belongs to.</param>
    /// <param name="zone">The gym's time zone, IANA id.</param>
    /// <param name="lifter">Who trains; the lifter's key.</param>
    /// <param name="plan">The plan's name.</param>
    /// <exception cref="InvalidOperationException">Nothing is due.</exception>
    public SessionHead Head(FactId id, Instant begun, LocalDate date, string zone, string lifter, string plan)
    {
        var day = Day ?? throw new InvalidOperationException($"nothing is due on {date}");
        return new SessionHead
        {
            Id = id,
            Begun = begun,
            Date = date,
            Zone = zone,
            Lifter = lifter,
            Plan = plan,
            DayKey = day.Key,
            DayName = day.Name,
            Kind = day.Kind,
            Prescriptions = [.. Prescriptions, .. NoTimeFor],
        };
    }
}
