using System.Reflection;
using Npgsql;

namespace RackSide.Server;

/// <summary>Brings the database's schema to this program's version, script by script, all or nothing.</summary>
internal static class Migration
{
    /// <summary>The version that this program knows.</summary>
    public const int Version = 1;

    private const long Lock = 7249301;

    /// <summary>The version that a database has; 0 where it has none.</summary>
    public static int Of(NpgsqlConnection connection)
    {
        using var there = new NpgsqlCommand("select to_regclass('rackside.version') is not null", connection);
        if (there.ExecuteScalar() is not true)
        {
            return 0;
        }

        using var version = new NpgsqlCommand("select coalesce(max(number), 0) from rackside.version", connection);
        return (int)version.ExecuteScalar()!;
    }

    /// <summary>Makes or renews the schema, and lets a role use it.</summary>
    /// <param name="connection">As the owner.</param>
    /// <param name="role">The racks' role; null where the owner's own will do.</param>
    /// <exception cref="Trouble">A newer program made it.</exception>
    public static void Run(NpgsqlConnection connection, string? role)
    {
        using var all = connection.BeginTransaction();
        Execute(connection, $"select pg_advisory_xact_lock({Lock})");
        Execute(connection, "create schema if not exists rackside; create table if not exists rackside.version (number integer primary key, applied timestamptz not null default now())");
        var from = Of(connection);
        Refuse(from);
        for (var number = from + 1; number <= Version; number++)
        {
            Execute(connection, Script(number));
            Execute(connection, $"insert into rackside.version (number) values ({number})");
        }

        if (role is not null)
        {
            Grant(connection, role);
        }

        all.Commit();
    }

    /// <summary>Stops where a newer program made the schema.</summary>
    /// <exception cref="Trouble">It did.</exception>
    public static void Refuse(int version)
    {
        if (version > Version)
        {
            throw new Trouble(TroubleKind.Version, $"the gym was prepared by a newer RackSide (version {version} of its tables; this one knows {Version}); update RackSide on this machine. Nothing was changed");
        }
    }

    private static void Grant(NpgsqlConnection connection, string role)
    {
        using var quoted = new NpgsqlCommand("select format('%I', $1)", connection) { Parameters = { new NpgsqlParameter<string> { TypedValue = role } } };
        var name = (string)quoted.ExecuteScalar()!;
        Execute(connection, $"grant usage on schema rackside to {name}; grant select on rackside.version, rackside.gym, rackside.event to {name}; "
            + $"grant execute on function rackside.push(text[], bigint[], text[], text[]), rackside.erase(text, bigint, text, text) to {name}");
    }

    private static void Execute(NpgsqlConnection connection, string sql)
    {
        using var command = new NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }

    private static string Script(int number)
    {
        using var text = new StreamReader(Assembly.GetExecutingAssembly().GetManifestResourceStream($"{number}.sql")!);
        return text.ReadToEnd();
    }
}
