using NodaTime;
using RackSide.Pages.Bodies;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide;

/// <summary>Check-ins and what is told of the body: kept, asked back where hardly meant, and read together.</summary>
/// <param name="gym">Where they are kept.</param>
/// <param name="lifter">Whose.</param>
internal sealed class CheckIns(Gym gym, Lifter lifter)
{
    /// <summary>All there is to say today.</summary>
    public BodyStanding Standing =>
        BodyStanding.For(lifter, gym.Logbook.WeighIns(lifter.Key), new TrainingHistory([], gym.Logbook.Told(lifter.Key)).Told, gym.Today);

    /// <summary>Why a weight is asked back; null where it is not.</summary>
    public string? Doubt(Mass weight, LocalDate on) => EntryDoubt.Of(weight, gym.Logbook.WeighIns(lifter.Key), lifter.Body, on);

    /// <summary>Why a height is asked back; null where it is not.</summary>
    public string? Doubt(Height height) => EntryDoubt.Of(height, gym.Logbook.WeighIns(lifter.Key).LastOrDefault()?.Weight);

    /// <summary>Keeps a check-in of a morning: weight, sleep and soreness are of that day, food and water of the day before.</summary>
    /// <returns>What was written, in words; empty where nothing was told.</returns>
    public string Keep(CheckInAnswers answers, LocalDate on)
    {
        if (answers.Weight is { } weight)
        {
            gym.Logbook.Weigh(lifter.Key, on, weight);
        }

        Tell(on, day => day with { Slept = answers.Slept, Sore = answers.Sore });
        Tell(on.PlusDays(-1), day => day with { Kilocalories = answers.Kilocalories, Millilitres = answers.Millilitres });
        return answers.InWords;
    }

    /// <summary>Keeps what was told for the numbers.</summary>
    public Lifter Keep(BodyProfile profile)
    {
        var told = lifter with { Body = profile };
        gym.Logbook.Keep(told);
        return told;
    }

    private void Tell(LocalDate on, Func<DayTold, DayTold> what)
    {
        // The identity is taken last: one that is not written would leave a gap.
        var nothing = new DayTold(default, gym.Clock.GetCurrentInstant(), on);
        if (what(nothing) is var told && told != nothing)
        {
            gym.Logbook.Tell(lifter.Key, told with { Id = gym.Logbook.NextId() });
        }
    }
}
