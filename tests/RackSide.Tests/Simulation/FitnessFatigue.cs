namespace RackSide.Simulation;

/// <summary>
/// The fitness-fatigue recurrence: each day what training built and what it tired decay at their own pace, the day's
/// load is added to both (it counts on its own day), and the difference is what can be done. Banister 1975; Morton,
/// Fitz-Clarke and Banister 1990, J Appl Physiol 69(3):1171-1177 (recurrence form seen). Its parameters are unstable and
/// come from endurance and throwing, so it may move an invented lifter in a test, and never tell a real one anything.
/// </summary>
/// <param name="FitnessDays">Days in which fitness decays to 1/e.</param>
/// <param name="FatigueDays">Days in which fatigue decays to 1/e.</param>
/// <param name="FitnessWeight">What fitness adds.</param>
/// <param name="FatigueWeight">What fatigue takes.</param>
/// <param name="Fitness">Fitness now.</param>
/// <param name="Fatigue">Fatigue now.</param>
public readonly record struct FitnessFatigue(
    double FitnessDays, double FatigueDays, double FitnessWeight = 1, double FatigueWeight = 2, double Fitness = 0, double Fatigue = 0)
{
    /// <summary>What can be done, above the start.</summary>
    public double Performance => (FitnessWeight * Fitness) - (FatigueWeight * Fatigue);

    /// <summary>What can be done, above the start, if every day had this load for ever.</summary>
    public double Steady(double load) =>
        (FitnessWeight * load / (1 - Math.Exp(-1 / FitnessDays))) - (FatigueWeight * load / (1 - Math.Exp(-1 / FatigueDays)));

    /// <summary>The next day, with its load.</summary>
    public FitnessFatigue Day(double load) => this with
    {
        Fitness = (Fitness * Math.Exp(-1 / FitnessDays)) + load,
        Fatigue = (Fatigue * Math.Exp(-1 / FatigueDays)) + load,
    };
}
