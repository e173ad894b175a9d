namespace RackSide.Training.Body;

/// <summary>The page of facts on food and water.</summary>
public static class FoodFacts
{
    /// <summary>The facts, what matters most first.</summary>
    public static IReadOnlyList<FactLine> All { get; } =
    [
        new("a little more than you need",
            "250 to 500 kcal a day over the need build muscle about as fast as it can be built; more than that is stored as fat.",
            "Iraki 2019; Slater 2019; Helms 2023 (seen)"),
        new("how fast",
            "A quarter to half a per cent of body weight a week, and never over a pound. Whoever carries more fat than they want eats "
            + "at the need, not over it.",
            "Iraki 2019 (seen); the pound: common practice"),
        new("protein",
            "1.4 to 2.0 g for a kilogram of body weight a day, in three to five meals of 20 to 40 g. More does no more.",
            "Jäger 2017 (seen); Morton 2018 (second-hand)"),
        new("meals",
            "About 600 to 700 kcal each are easy to plan with; four of them and a snack feed most who train. A guide, not a rule.",
            "common practice"),
        new("water",
            "28 to 40 ml drunk for a kilogram of body weight; more in heat. Thirst and pale urine are good guides. " + WaterAdvice.Caution,
            "EFSA 2010 (seen); IOM 2004 (from memory)"),
        new("salt",
            "Under 5 g a day, food's own counted. Training as here needs no extra; salt tablets are for nobody without a doctor's word, "
            + "least of all with high blood pressure, heart or kidney trouble.",
            "WHO 2012 (from memory)"),
        new("a weight is not a trend",
            "One morning scatters by about half a kilogram: water, salt, food on its way. Creatine just begun, or a holiday's meals, "
            + "bring a kilogram or two of water in a week or two, and it says nothing on fat.",
            "Cheuvront 2004 (from memory); Turicchi 2020 (seen)"),
        new("formulas",
            "They come within ten per cent for most people and miss by more for some. Your own weighings and meals over four weeks are "
            + "the better word.",
            "Mifflin 1990 (seen); NASEM 2023 (second-hand)"),
    ];
}
