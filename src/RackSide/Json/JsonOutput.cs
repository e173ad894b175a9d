using System.Text;
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

    // The names of people as they are written; the output goes to no web page, where that would matter.
    private static readonly JsonWriterOptions AsWritten = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The shapes.</summary>
    public static RackSideJson Shapes => RackSideJson.Default;

    /// <summary>Writes a value and ends the line.</summary>
    /// <remarks>By the code that was generated for writing, and not through the serializer, which is ready for much that is never asked of it.</remarks>
    public static void Write<T>(TextWriter to, T value, JsonTypeInfo<T> type)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, AsWritten))
        {
            type.SerializeHandler!(json, value);
        }

        to.WriteLine(Encoding.UTF8.GetString(bytes.GetBuffer(), 0, (int)bytes.Length));
    }
}

/// <summary>The shapes that are written, mapped when the program is built.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Serialization, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
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
