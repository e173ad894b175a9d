using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>What a day's life and training need, kcal, by formula.</summary>
/// <param name="Resting">The need at rest, by Mifflin and St Jeor.</param>
/// <param name="Kilocalories">The need of a day: the need at rest times the activity level.</param>
/// <param name="ByFormula">The same by each formula, the default first.</param>
public sealed record EnergyNeed(decimal Resting, decimal Kilocalories, IReadOnlyList<(string Formula, decimal Kilocalories)> ByFormula)
{
    /// <summary>The least of the formulas.</summary>
    public decimal Least => ByFormula.Min(f => f.Kilocalories);

    /// <summary>The most of the formulas.</summary>
    public decimal Most => ByFormula.Max(f => f.Kilocalories);

    /// <summary>The need of a grown-up.</summary>
    /// <param name="kilograms">Body mass, kg.</param>
    /// <param name="centimetres">Height, cm.</param>
    /// <param name="years">Age in whole years.</param>
    /// <param name="sex">Which numbers the formulas are taken with.</param>
    /// <param name="activity">How active the life is.</param>
    public static EnergyNeed Of(decimal kilograms, decimal centimetres, int years, FormulaSex sex, DailyActivity activity)
    {
        var level = ActivityFactor.Of(activity);
        var kind = ActivityFactor.RequirementClass(level);
        var resting = RestingEnergy.MifflinStJeor(kilograms, centimetres, years, sex);
        return new(resting, resting * level,
        [
            ("Mifflin-St Jeor", resting * level),
            ("EER 2023", EnergyRequirement.Of2023(kilograms, centimetres, years, sex, kind)),
            ("Roza-Shizgal", RestingEnergy.RozaShizgal(kilograms, centimetres, years, sex) * level),
            ("EER 2005", EnergyRequirement.Of2005(kilograms, centimetres, years, sex, kind)),
        ]);
    }
}
