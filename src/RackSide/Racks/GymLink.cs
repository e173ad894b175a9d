using System.Diagnostics;
using System.Text;
using System.Text.Json;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Racks;

/// <summary>
/// The gym's server, through a program of its own that speaks to it: <c>rackside-gym</c>, a line of JSON each way. So a rack
/// alone carries and starts nothing of that, and no fault of a network library reaches a session. It is started at the first
/// question and ends with its input.
/// </summary>
internal sealed class GymLink(GymServerFile to, Func<string, string?> environment) : IGym, IDisposable
{
    private const string Variable = "RACKSIDE_GYM_PROGRAM", Name = "rackside-gym";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    private readonly Lock gate = new();
    private Process? process;
    private bool closed;

    /// <inheritdoc/>
    public string Identity() => Ask("gym").GetProperty("gym").GetString()!;

    /// <summary>Whether the connection is one that can be tried.</summary>
    /// <exception cref="GymTrouble">It is not.</exception>
    public void Check() => Ask("open", Connection);

    /// <summary>Makes the gym's tables, or renews them, and lets a role use them.</summary>
    /// <exception cref="GymTrouble">They cannot be made.</exception>
    public void Prepare(string? role) => Ask("prepare", json => json.WriteString("role", role));

    /// <inheritdoc/>
    public void Push(IReadOnlyList<GymEvent> events) => Ask("push", json =>
    {
        json.WriteStartArray("events");
        foreach (var one in events)
        {
            Write(json, one);
        }

        json.WriteEndArray();
    });

    /// <inheritdoc/>
    public void Erase(LifterErased erased) => Ask("erase", json =>
    {
        json.WritePropertyName("event");
        Write(json, erased);
    });

    /// <inheritdoc/>
    public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) =>
    [
        .. Ask("pull", json =>
        {
            json.WriteNumber("after", after);
            json.WriteNumber("most", most);
        }).GetProperty("events").EnumerateArray().Select(e => (e.GetProperty("position").GetInt64(), e.GetProperty("body").GetString()!)),
    ];

    /// <inheritdoc/>
    public FactId? At(long position)
    {
        var answer = Ask("at", json => json.WriteNumber("position", position));
        return answer.TryGetProperty("rack", out var rack) ? new FactId(rack.GetString()!, answer.GetProperty("count").GetInt64()) : null;
    }

    /// <summary>Ends the program, also in the middle of a question.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            closed = true;
            End();
        }
    }

    private JsonElement Ask(string what, Action<Utf8JsonWriter>? more = null)
    {
        var helper = Started(opens: what != "open");
        try
        {
            return Answer(helper, what, more);
        }
        catch (Exception e) when (e is IOException or InvalidOperationException or JsonException or ObjectDisposedException)
        {
            lock (gate)
            {
                End();
            }

            throw new GymTrouble(ExitCode.Unavailable, $"{Name} stopped before it answered; what was done here waits and is sent later");
        }
    }

    private static JsonElement Answer(Process helper, string what, Action<Utf8JsonWriter>? more)
    {
        helper.StandardInput.WriteLine(Question(what, more));
        helper.StandardInput.Flush();
        using var answer = JsonDocument.Parse(helper.StandardOutput.ReadLine() ?? throw new IOException("it ended"));
        return answer.RootElement.TryGetProperty("trouble", out var kind)
            ? throw new GymTrouble(Code(kind.GetString()), answer.RootElement.GetProperty("sentence").GetString()!)
            : answer.RootElement.Clone();
    }

    private void Connection(Utf8JsonWriter json)
    {
        json.WriteString("connection", to.Connection);
        json.WriteString("password", to.Password(environment));
    }

    private Process Started(bool opens)
    {
        Process started;
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            if (process is { HasExited: false })
            {
                return process;
            }

            started = process = Process.Start(new ProcessStartInfo(Program())
            {
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                StandardInputEncoding = new UTF8Encoding(false),
                StandardOutputEncoding = Encoding.UTF8,
            })!;
        }

        if (opens)
        {
            Answer(started, "open", Connection);
        }

        return started;
    }

    private string Program()
    {
        var program = environment(Variable) is { Length: > 0 } named ? named : Path.Combine(AppContext.BaseDirectory, Name);
        return File.Exists(program) ? program
            : throw new GymTrouble(ExitCode.Unavailable, $"{program} is not there: the program that speaks to a gym's server is a package of its own, rackside-gym; install it, or say with {Variable} where it is");
    }

    private void End()
    {
        if (process is not { } running)
        {
            return;
        }

        process = null;
        try
        {
            running.StandardInput.Close();
            if (!running.WaitForExit(closed ? TimeSpan.Zero : Patience))
            {
                running.Kill();
            }
        }
        catch (Exception e) when (e is IOException or InvalidOperationException)
        {
            // It has gone already.
        }

        running.Dispose();
    }

    private static string Question(string what, Action<Utf8JsonWriter>? more)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteString("ask", what);
            more?.Invoke(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static void Write(Utf8JsonWriter json, GymEvent one)
    {
        json.WriteStartObject();
        json.WriteString("rack", one.Id.Rack);
        json.WriteNumber("count", one.Id.Sequence);
        json.WriteString("lifter", one.Lifter);
        json.WriteString("body", GymEventText.Write(one));
        json.WriteEndObject();
    }

    private static int Code(string? kind) => kind switch
    {
        "Unreachable" or "Missing" => ExitCode.Unavailable,
        "Certificate" or "Version" => ExitCode.Protocol,
        "Rights" => ExitCode.NoPermission,
        "Connection" => ExitCode.Usage,
        _ => ExitCode.InputOutput,
    };
}
