using RackSide.Training.History;

namespace RackSide.Training.Body;

/// <summary>
/// The estimated energy requirement of grown-ups, kcal a day, from mass (kg), height (cm), age (years), sex and a class of
/// activity from 0 (inactive) to 3 (very active). Not for under 19, in pregnancy or while nursing.
/// </summary>
public static class EnergyRequirement
{
    // Constant, a year, a centimetre, a kilogram; the classes in order.
    private static readonly (decimal C, decimal Year, decimal Cm, decimal Kg)[] Men =
    [
        (753.07m, 10.83m, 6.50m, 14.10m),
        (581.47m, 10.83m, 8.30m, 14.94m),
        (1004.82m, 10.83m, 6.52m, 15.91m),
        (-517.88m, 10.83m, 15.61m, 19.11m),
    ];

    private static readonly (decimal C, decimal Year, decimal Cm, decimal Kg)[] Women =
    [
        (584.90m, 7.01m, 5.72m, 11.71m),
        (575.77m, 7.01m, 6.60m, 12.14m),
        (710.25m, 7.01m, 6.54m, 12.34m),
        (511.83m, 7.01m, 9.07m, 12.56m),
    ];

    // The footnote in circulated copies of the 2005 table prints the women's for both; the table itself comes out with these.
    private static readonly decimal[] MenActive2005 = [1.00m, 1.11m, 1.25m, 1.48m];
    private static readonly decimal[] WomenActive2005 = [1.00m, 1.12m, 1.27m, 1.45m];

    /// <summary>National Academies 2023, Dietary reference intakes for energy, tables 5-15 and 5-16 (second-hand, two copies agree).</summary>
    public static decimal Of2023(decimal kilograms, decimal centimetres, int years, FormulaSex sex, int activity)
    {
        var (constant, year, cm, kg) = (sex == FormulaSex.Male ? Men : Women)[activity];
        return constant - (year * years) + (cm * centimetres) + (kg * kilograms);
    }

    /// <summary>Institute of Medicine 2005, chapter 5: the one before, kept beside it for the spread.</summary>
    public static decimal Of2005(decimal kilograms, decimal centimetres, int years, FormulaSex sex, int activity)
    {
        var metres = centimetres / 100;
        return sex == FormulaSex.Male
            ? 662 - (9.53m * years) + (MenActive2005[activity] * ((15.91m * kilograms) + (539.6m * metres)))
            : 354 - (6.91m * years) + (WomenActive2005[activity] * ((9.36m * kilograms) + (726 * metres)));
    }
}
