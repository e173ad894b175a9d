using Npgsql;

namespace RackSide.Server;

/// <summary>An event as the server keeps it.</summary>
/// <param name="Rack">The rack that wrote it.</param>
/// <param name="Count">That rack's count.</param>
/// <param name="Lifter">Whose it is.</param>
/// <param name="Body">One line of JSON; nothing here looks into it.</param>
internal sealed record Sealed(string Rack, long Count, string Lifter, string Body);

/// <summary>The gym's server. One caller at a time; after a failure the next call connects anew.</summary>
internal sealed class GymServer : IDisposable
{
    private readonly NpgsqlConnectionStringBuilder to;
    private readonly NpgsqlDataSource source;
    private CertificateFault refused;
    private NpgsqlConnection? connection;

    /// <summary>Connects nowhere yet.</summary>
    /// <exception cref="Trouble">The connection cannot be understood.</exception>
    public GymServer(string connection, string? password, TimeProvider time)
    {
        to = Connecting.Read(connection);
        source = Connecting.Source(to, password, time, fault => refused = fault);
    }

    /// <summary>The gym's identity, by which a rack knows that it is still the same.</summary>
    /// <exception cref="Trouble">It cannot be had.</exception>
    public string Gym() => Do(open =>
    {
        var version = Migration.Of(open);
        Migration.Refuse(version);
        if (version < Migration.Version)
        {
            throw new Trouble(TroubleKind.Missing, version == 0
                ? $"the database \"{to.Database}\" holds no gym yet; run rackside gym prepare once, as its owner (docs/gym.md)"
                : $"the gym's tables are of an older RackSide (version {version}, needed {Migration.Version}); run rackside gym prepare once, as the owner");
        }

        using var gym = new NpgsqlCommand("select id from rackside.gym", open);
        return (string)gym.ExecuteScalar()!;
    });

    /// <summary>Makes or renews the schema.</summary>
    /// <exception cref="Trouble">It cannot be.</exception>
    public void Prepare(string? role) => Do(open =>
    {
        Migration.Run(open, role);
        return 0;
    });

    /// <summary>Adds events, or ignores those that are there; one statement, all or none.</summary>
    /// <returns>How many were new.</returns>
    /// <exception cref="Trouble">It cannot be told whether they arrived; send them again.</exception>
    public int Push(IReadOnlyList<Sealed> events) => Do(open =>
    {
        using var push = new NpgsqlCommand("select rackside.push($1, $2, $3, $4)", open)
        {
            Parameters =
            {
                new NpgsqlParameter<string[]> { TypedValue = [.. events.Select(e => e.Rack)] },
                new NpgsqlParameter<long[]> { TypedValue = [.. events.Select(e => e.Count)] },
                new NpgsqlParameter<string[]> { TypedValue = [.. events.Select(e => e.Lifter)] },
                new NpgsqlParameter<string[]> { TypedValue = [.. events.Select(e => e.Body)] },
            },
        };
        return (int)push.ExecuteScalar()!;
    });

    /// <summary>Erases a lifter for good.</summary>
    /// <param name="erasure">The event that says so.</param>
    /// <exception cref="Trouble">It cannot be told whether it was; ask again.</exception>
    public void Erase(Sealed erasure) => Do(open =>
    {
        using var erase = new NpgsqlCommand("select rackside.erase($1, $2, $3, $4)", open)
        {
            Parameters =
            {
                new NpgsqlParameter<string> { TypedValue = erasure.Rack },
                new NpgsqlParameter<long> { TypedValue = erasure.Count },
                new NpgsqlParameter<string> { TypedValue = erasure.Lifter },
                new NpgsqlParameter<string> { TypedValue = erasure.Body },
            },
        };
        return erase.ExecuteNonQuery();
    });

    /// <summary>Events after a position, in the order in which they came.</summary>
    /// <exception cref="Trouble">They cannot be had.</exception>
    public IReadOnlyList<(long Position, string Body)> Pull(long after, int most) => Do(open =>
    {
        using var pull = new NpgsqlCommand("select position, body::text from rackside.event where position > $1 order by position limit $2", open)
        {
            Parameters = { new NpgsqlParameter<long> { TypedValue = after }, new NpgsqlParameter<int> { TypedValue = most } },
        };
        using var reader = pull.ExecuteReader();
        List<(long, string)> events = [];
        while (reader.Read())
        {
            events.Add((reader.GetInt64(0), reader.GetString(1)));
        }

        return (IReadOnlyList<(long, string)>)events;
    });

    /// <summary>The identity of the event at a position; null where there is none any more.</summary>
    /// <exception cref="Trouble">It cannot be had.</exception>
    public (string Rack, long Count)? At(long position) => Do<(string, long)?>(open =>
    {
        using var at = new NpgsqlCommand("select rack, count from rackside.event where position = $1", open)
        {
            Parameters = { new NpgsqlParameter<long> { TypedValue = position } },
        };
        using var reader = at.ExecuteReader();
        return reader.Read() ? (reader.GetString(0), reader.GetInt64(1)) : null;
    });

    /// <inheritdoc/>
    public void Dispose()
    {
        connection?.Dispose();
        source.Dispose();
    }

    private T Do<T>(Func<NpgsqlConnection, T> what)
    {
        try
        {
            return what(connection ??= source.OpenConnection());
        }
        catch (Exception fault)
        {
            // Whatever it was, the connection is in no known state; and the rack is told, in a sentence.
            connection?.Dispose();
            connection = null;
            var trouble = Explaining.Of(fault, to, refused);
            refused = CertificateFault.None;
            throw trouble;
        }
    }
}
