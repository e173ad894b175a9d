using System.Text;
using System.Text.Json;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Records;
using RackSide.Training.Racks;

namespace RackSide.Logbook;

/// <summary>An event as one line of JSON, in the words of an exported record (docs/export.md); this is what the gym's server keeps.</summary>
public static class GymEventText
{
    /// <summary>The line for an event.</summary>
    public static string Write(GymEvent one)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.Write(GymEvents.Of(one));
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    /// <summary>The event of a line.</summary>
    /// <exception cref="InvalidDataException">It is none that this version knows.</exception>
    public static GymEvent Read(string line)
    {
        try
        {
            using var json = JsonDocument.Parse(line);
            return GymEvents.Read(RecordReading.Document(json.RootElement));
        }
        catch (JsonException e)
        {
            throw new InvalidDataException("an event of the gym is not JSON", e);
        }
    }
}
