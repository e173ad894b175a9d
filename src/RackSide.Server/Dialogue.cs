using System.Text;
using System.Text.Json;

namespace RackSide.Server;

/// <summary>
/// What the rack's program says to this one on its standard input, and hears on its output: a line of JSON each way, one
/// answer a question. The password comes that way too, so it stands on no command line.
/// </summary>
internal sealed class Dialogue(TimeProvider time) : IDisposable
{
    private GymServer? server;

    /// <summary>Answers until nothing more is asked.</summary>
    public void Run(TextReader from, TextWriter to)
    {
        while (from.ReadLine() is { } line)
        {
            to.WriteLine(Answer(line));
            to.Flush();
        }
    }

    /// <summary>The answer to one question.</summary>
    public string Answer(string line)
    {
        using var question = JsonDocument.Parse(line);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            try
            {
                Answer(question.RootElement, json);
            }
            catch (Trouble trouble)
            {
                json.WriteString("trouble", trouble.Kind.ToString());
                json.WriteString("sentence", trouble.Message);
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    /// <inheritdoc/>
    public void Dispose() => server?.Dispose();

    private void Answer(JsonElement question, Utf8JsonWriter json)
    {
        switch (question.GetProperty("ask").GetString())
        {
            case "open":
                server?.Dispose();
                server = new GymServer(Text(question, "connection")!, Text(question, "password"), time);
                break;
            case "prepare":
                server!.Prepare(Text(question, "role"));
                break;
            case "gym":
                json.WriteString("gym", server!.Gym());
                break;
            case "push":
                json.WriteNumber("stored", server!.Push([.. question.GetProperty("events").EnumerateArray().Select(Event)]));
                break;
            case "erase":
                server!.Erase(Event(question.GetProperty("event")));
                break;
            case "pull":
                Pull(question, json);
                break;
            case "at":
                At(question, json);
                break;
            case var other:
                throw new Trouble(TroubleKind.Other, $"rackside-gym does not know \"{other}\"; it is of another version than rackside");
        }
    }

    private void Pull(JsonElement question, Utf8JsonWriter json)
    {
        json.WriteStartArray("events");
        foreach (var (position, body) in server!.Pull(question.GetProperty("after").GetInt64(), question.GetProperty("most").GetInt32()))
        {
            json.WriteStartObject();
            json.WriteNumber("position", position);
            json.WriteString("body", body);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void At(JsonElement question, Utf8JsonWriter json)
    {
        if (server!.At(question.GetProperty("position").GetInt64()) is var (rack, count))
        {
            json.WriteString("rack", rack);
            json.WriteNumber("count", count);
        }
    }

    private static Sealed Event(JsonElement one) => new(
        one.GetProperty("rack").GetString()!, one.GetProperty("count").GetInt64(), one.GetProperty("lifter").GetString()!, one.GetProperty("body").GetString()!);

    private static string? Text(JsonElement question, string name) =>
        question.TryGetProperty(name, out var text) && text.ValueKind == JsonValueKind.String ? text.GetString() : null;
}
