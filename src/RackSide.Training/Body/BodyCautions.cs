namespace RackSide.Training.Body;

/// <summary>What is said beside numbers on food, weight and water; one line each. Our own words, common practice.</summary>
public static class BodyCautions
{
    /// <summary>Beside every target.</summary>
    public const string General = "General information for healthy adults, not medical advice.";

    /// <summary>Before any number is followed.</summary>
    public const string AskFirst =
        "Ask a clinician first if you are pregnant or nursing, under 18, have kidney, heart or blood-pressure trouble, diabetes, an eating "
        + "disorder past or present, or take regular medicines.";

    /// <summary>Beside a fast rate.</summary>
    public const string Water = "Creatine just begun or a holiday's meals bring a kilogram or two of water: then wait two weeks.";

    /// <summary>Beside the need that was learned.</summary>
    public const string Learned = "It believes the food as you told it; most people tell too little.";

    /// <summary>Beside a forecast.</summary>
    public const string Forecast = "a forecast, from a model held against losing weight";
}
