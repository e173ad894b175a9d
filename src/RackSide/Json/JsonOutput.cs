using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace RackSide.Json;

/// <summary>Writes JSON for other programs: camel case, indented, numbers and dates the same under every culture.</summary>
internal static class JsonOutput
{
    /// <summary>The version of what is written; it grows when a reader would have to change.</summary>
    public const int Schema = 1;

    /// <summary>The shapes, with the names of people as they are written; the output goes to no web page, where that would matter.</summary>
    public static RackSideJson Shapes { get; } = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    });

    /// <summary>Writes a value and ends the line.</summary>
    public static void Write<T>(TextWriter to, T value, JsonTypeInfo<T> type) => to.WriteLine(JsonSerializer.Serialize(value, type));
}

/// <summary>The shapes that are written, mapped when the program is built.</summary>
[JsonSerializable(typeof(TodayJson))]
[JsonSerializable(typeof(SummaryJson))]
[JsonSerializable(typeof(NoWeekJson))]
[JsonSerializable(typeof(HistoryJson))]
[JsonSerializable(typeof(PlatesJson))]
[JsonSerializable(typeof(AwayJson))]
[JsonSerializable(typeof(CalendarJson))]
[JsonSerializable(typeof(RedateJson))]
[JsonSerializable(typeof(BodyJson))]
[JsonSerializable(typeof(CheckJson))]
[JsonSerializable(typeof(LiftersJson))]
[JsonSerializable(typeof(GymStatusJson))]
[JsonSerializable(typeof(ForecastJson))]
[JsonSerializable(typeof(PlanTrialJson))]
[JsonSerializable(typeof(PlansJson))]
internal sealed partial class RackSideJson : JsonSerializerContext;
