using RackSide.Server;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Racks;

/// <summary>What stands between a rack and its gym, each told in one sentence that says what to do. SQLSTATE codes are those of PostgreSQL's manual, appendix A (from memory).</summary>
[Collection(nameof(PostgresServer))]
public class GymTroubleTests(PostgresServer server)
{
    [PostgresFact]
    public void A_server_that_does_not_answer() =>
        Asked(server.To("gym", port: PostgresServer.FreePort())).Should().Match("*cannot be reached (Connection refused); check that it runs*").And.Contain("sent later");

    [PostgresFact]
    public void A_wrong_password() =>
        Asked(server.To(Prepared()), "guess").Should().Match("*: the password for \"rack\" is wrong");

    [PostgresFact]
    public void No_password() =>
        Asked(server.To(Prepared()), password: null).Should().Match("*asks for a password; put it into a file*");

    [PostgresFact]
    public void A_database_that_is_not_there() =>
        Asked(server.To("nowhere")).Should().Match("*: there is no database \"nowhere\"; make it first*");

    [PostgresFact]
    public void A_database_without_a_gym() =>
        Asked(server.To(server.NewDatabase())).Should().Match("*holds no gym yet; run rackside gym prepare once*");

    [PostgresFact]
    public void A_gym_that_a_newer_RackSide_prepared()
    {
        var database = Prepared();
        server.Sql(database, "insert into rackside.version (number) values (99)");

        Asked(server.To(database)).Should().Match("*prepared by a newer RackSide (version 99*update RackSide on this machine. Nothing was changed");
        using var owner = new GymServer(server.To(database, PostgresServer.Owner), PostgresServer.OwnerPassword, TimeProvider.System);
        owner.Invoking(o => o.Prepare(null)).Should().Throw<Trouble>().Which.Kind.Should().Be(TroubleKind.Version);
    }

    [PostgresFact]
    public void A_role_that_was_given_no_right()
    {
        var database = Prepared(role: null);

        Asked(server.To(database)).Should().Match("*\"rack\" lacks a right there (permission denied for schema rackside); run rackside gym prepare with --role rack*");
    }

    [PostgresFact]
    public void A_certificate_of_nobody_that_is_trusted()
    {
        var to = server.To(Prepared());
        server.Certify("localhost", PostgresServer.Good, ownRoot: true);

        var said = AfterReload(to, "not one that this machine trusts");

        server.Certify("localhost", PostgresServer.Good);
        said.Should().Match("*its certificate is not one that this machine trusts; name the gym's own root certificate with \"Root Certificate=FILE\"");
        AfterReload(to, "");
    }

    [PostgresFact]
    public void A_certificate_that_has_run_out()
    {
        var to = server.To(Prepared());
        server.Certify("localhost", PostgresServer.Over);

        var said = AfterReload(to, "run out");

        server.Certify("localhost", PostgresServer.Good);
        said.Should().Match("*its certificate has run out; make a new one there, or set this machine's clock if that is wrong");
        AfterReload(to, "");
    }

    [PostgresFact]
    public void A_certificate_for_another_name()
    {
        Asked(server.To(Prepared(), host: "127.0.0.1")).Should().Match("*its certificate is for another name; connect by the name that it has*");
    }

    [PostgresFact]
    public void A_root_certificate_that_cannot_be_read() =>
        Asked(server.To(Prepared()).Replace("root.pem", "gone.pem")).Should().Match("*gone.pem: the root certificate cannot be read there*");

    [PostgresFact]
    public void The_connection_is_encrypted_unless_it_says_otherwise()
    {
        var database = Prepared();

        server.Ask(database, "select ssl from pg_stat_ssl where pid = pg_backend_pid()").Should().Be(true);
        Connecting.Read("Host=gym.local").SslMode.Should().Be(Npgsql.SslMode.VerifyFull);
        Connecting.Read("Host=gym.local;SSL Mode=Disable").SslMode.Should().Be(Npgsql.SslMode.Disable);
    }

    [PostgresFact]
    public void The_racks_role_can_add_and_read_and_nothing_else()
    {
        var database = Prepared();
        var connection = $"{server.To(database)};Password={PostgresServer.RackPassword};SSL Mode=VerifyFull;Pooling=false";
        foreach (var forbidden in new[]
        {
            "update rackside.event set body = '{}'", "delete from rackside.event", "insert into rackside.event (rack, count, lifter, body) values ('a', 1, 'b', '{}')",
            "truncate rackside.event", "drop table rackside.event", "delete from rackside.erased", "select * from rackside.erased", "create table rackside.mine (a int)",
            "insert into rackside.version (number) values (2)", "create schema mine",
        })
        {
            using var rack = new Npgsql.NpgsqlConnection(connection);
            rack.Open();
            using var command = new Npgsql.NpgsqlCommand(forbidden, rack);
            command.Invoking(c => c.ExecuteNonQuery()).Should().Throw<Npgsql.PostgresException>(forbidden).Which.SqlState.Should().Be("42501", forbidden);
        }
    }

    [PostgresFact]
    public void Preparing_twice_and_twice_at_once_changes_nothing()
    {
        var database = server.NewDatabase();
        Parallel.For(0, 4, _ => Prepare(database, PostgresServer.Rack));

        server.Ask(database, "select count(*) from rackside.gym").Should().Be(1L);
        server.Ask(database, "select count(*) from rackside.version").Should().Be(1L);
    }

    [Theory]
    [InlineData("Host=gym.local;Password=chalk", "a password does not belong into the connection")]
    [InlineData("Host=gym.local;pwd=chalk", "a password does not belong into the connection")]
    [InlineData("Database=gym", "names no Host")]
    [InlineData("Host=gym.local;Hots=chalk", "cannot be read; write it as")]
    [InlineData("gym.local chalk", "cannot be read; write it as")]
    public void A_connection_that_cannot_be_used_is_refused_and_not_repeated(string connection, string sentence)
    {
        var said = ((Action)(() => Connecting.Read(connection))).Should().Throw<Trouble>().Which;

        said.Message.Should().Contain(sentence).And.NotContain("chalk");
        said.Kind.Should().Be(TroubleKind.Connection);
    }

    [PostgresFact]
    public void No_password_is_kept_or_printed_and_one_that_others_can_read_is_refused()
    {
        using var rack = new RackOnDisk("2026-11-02T18:00");
        var to = server.To(Prepared());
        var file = Path.Combine(rack.Folder, "password");
        File.WriteAllText(file, PostgresServer.RackPassword);
        PostgresServer.Allow(file, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);

        var open = rack.Rackside.RunWords("gym", "join", to, "--password-file", file);
        PostgresServer.Allow(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        var own = rack.Rackside.RunWords("gym", "join", to, "--password-file", file);
        var typed = rack.Rackside.RunWords("gym", "join", $"{to};Password={PostgresServer.RackPassword}");
        File.Delete(file);

        open.Should().BeEquivalentTo(new { Code = 78, Error = $"rackside: {file}: others can read the gym's password there; chmod 600 it\n" });
        own.Error.Should().BeEmpty();
        typed.Code.Should().Be(64);
        (open.Error + own.Out + typed.Error).Should().NotContain(PostgresServer.RackPassword);
        rack.FilesThatHold(PostgresServer.RackPassword).Should().BeEmpty();
    }

    [Fact]
    public void A_rack_alone_starts_nothing_and_keeps_nothing_of_a_gym()
    {
        using var rack = new RackOnDisk("2026-11-02T18:00");
        rack.SetUp("Ottoline Marsh");

        // A program that cannot be started would be told, were it asked for.
        var alone = CommandLine.In(rack.Folder, "2026-11-02T18:00").With("RACKSIDE_GYM_PROGRAM", "/nowhere");

        alone.Run("weigh 72.4").Should().BeEquivalentTo(new { Code = 0, Error = "" });
        alone.Run("gym status").Lines.Should().Equal("this rack is in no gym");
        alone.Run("gym sync").Error.Should().Contain("this rack is in no gym; join one");
        rack.FilesThatHold("racks").Should().BeEmpty("a log of a rack alone has no collection of that");
        typeof(Gym).Assembly.GetReferencedAssemblies().Select(a => a.Name).Should().NotContain(["Npgsql", "rackside-gym"]);
    }

    private static string Asked(string connection, string? password = PostgresServer.RackPassword)
    {
        using var gym = new GymServer(connection, password, TimeProvider.System);
        try
        {
            return gym.Gym();
        }
        catch (Trouble trouble)
        {
            return trouble.Message;
        }
    }

    // A reload takes a moment to reach the process that accepts.
    private static string AfterReload(string connection, string until) => Enumerable.Range(0, 200).Select(_ => Asked(connection))
        .First(said => until.Length == 0 ? !said.Contains("certificate", StringComparison.Ordinal) : said.Contains(until, StringComparison.Ordinal));

    private string Prepared(string? role = PostgresServer.Rack)
    {
        var database = server.NewDatabase();
        Prepare(database, role);
        return database;
    }

    private void Prepare(string database, string? role)
    {
        using var owner = new GymServer(server.To(database, PostgresServer.Owner), PostgresServer.OwnerPassword, TimeProvider.System);
        owner.Prepare(role);
    }
}
