using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace RackSide.Tests.Racks;

/// <summary>A PostgreSQL of this machine's packages, started on loopback for the tests alone, with a certificate of their own.</summary>
public sealed class PostgresServer : IDisposable
{
    internal const string Owner = "gym_owner", OwnerPassword = "owner's own", Rack = "rack", RackPassword = "chalk and steel";

    /// <summary>Days on which a certificate holds, whenever the tests run, and days that are over.</summary>
    internal static readonly (DateTimeOffset From, DateTimeOffset Until)
        Good = (Year(2020), Year(2100)), Over = (Year(2020), Year(2021));

    private readonly string folder = Directory.CreateTempSubdirectory("rackside-pg-").FullName;
    private readonly CertificateAuthority authority = new();
    private int databases;

    /// <summary>Makes and starts it; nothing where none is installed.</summary>
    public PostgresServer()
    {
        if (Missing is not null)
        {
            return;
        }

        Port = FreePort();
        File.WriteAllText(Path.Combine(folder, "password"), OwnerPassword);
        Give(folder);
        As("initdb", "-D", Data, "-U", Owner, "-A", "scram-sha-256", "--pwfile", Path.Combine(folder, "password"), "-E", "UTF8", "--locale=C", "-N");
        Certify("localhost", Good);
        File.AppendAllLines(Path.Combine(Data, "postgresql.conf"),
        [
            "listen_addresses = '127.0.0.1'", $"port = {Port}", "unix_socket_directories = ''", "fsync = off", "ssl = on", "logging_collector = off",
            $"ssl_cert_file = '{Certificate}'", $"ssl_key_file = '{Key}'", "shared_buffers = '64MB'", "max_connections = 40",
        ]);
        Start();
        Sql("postgres", $"create role {Rack} login password '{RackPassword}'");
    }

    /// <summary>Why there is none here; null where there is.</summary>
    public static string? Missing { get; } =
        Programs() is null ? "no PostgreSQL is installed; apt-get install postgresql"
        : IsRoot && !File.ReadLines("/etc/passwd").Any(l => l.StartsWith("postgres:", StringComparison.Ordinal)) ? "root cannot run PostgreSQL, and there is no user postgres"
        : null;

    /// <summary>Where it listens.</summary>
    internal int Port { get; }

    /// <summary>The root that its certificate is from.</summary>
    internal string Root => Path.Combine(folder, "root.pem");

    /// <summary>Password files as a person would keep them.</summary>
    internal string PasswordFile(string password)
    {
        var file = Path.Combine(folder, $"password-{password.Length}");
        File.WriteAllText(file, password + "\n");
        Allow(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        return file;
    }

    private string Data => Path.Combine(folder, "data");

    private string Certificate => Path.Combine(folder, "server.pem");

    private string Key => Path.Combine(folder, "server.key");

    /// <summary>The name of a database of its own.</summary>
    internal string NewDatabase()
    {
        var name = $"gym{Interlocked.Increment(ref databases)}";
        Sql("postgres", $"create database {name}");
        return name;
    }

    /// <summary>A connection to a database.</summary>
    internal string To(string database, string user = Rack, int? port = null, string host = "localhost") =>
        $"Host={host};Port={port ?? Port};Database={database};Username={user};Root Certificate={Root}";

    /// <summary>Runs statements as the owner.</summary>
    internal void Sql(string database, string sql)
    {
        using var connection = new Npgsql.NpgsqlConnection($"{To(database, Owner)};Password={OwnerPassword};SSL Mode=VerifyFull;Pooling=false");
        connection.Open();
        using var command = new Npgsql.NpgsqlCommand(sql, connection);
        command.ExecuteNonQuery();
    }

    /// <summary>One value as the owner.</summary>
    internal object? Ask(string database, string sql)
    {
        using var connection = new Npgsql.NpgsqlConnection($"{To(database, Owner)};Password={OwnerPassword};SSL Mode=VerifyFull;Pooling=false");
        connection.Open();
        using var command = new Npgsql.NpgsqlCommand(sql, connection);
        return command.ExecuteScalar();
    }

    /// <summary>Stops it, as a power cut would.</summary>
    internal void Stop() => As("pg_ctl", "stop", "-D", Data, "-m", "immediate", "-w", "-s");

    /// <summary>Starts it.</summary>
    internal void Start() => As("pg_ctl", "start", "-D", Data, "-l", Path.Combine(folder, "log"), "-w", "-s", "-t", "60");

    /// <summary>Sets who may do what with a file.</summary>
    internal static void Allow(string file, UnixFileMode mode)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, mode);
        }
    }

    /// <summary>Has it show another certificate from now on.</summary>
    internal void Certify(string host, (DateTimeOffset From, DateTimeOffset Until) holds, bool ownRoot = false)
    {
        var issuer = ownRoot ? new CertificateAuthority() : authority;
        var (certificate, key) = issuer.Issue(host, holds.From, holds.Until);
        File.WriteAllText(Certificate, certificate);
        File.WriteAllText(Key, key);
        Allow(Key, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.WriteAllText(Root, authority.Certificate);
        Give(Certificate);
        Give(Key);
        if (File.Exists(Path.Combine(Data, "postmaster.pid")))
        {
            As("pg_ctl", "reload", "-D", Data, "-s");
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (Missing is null)
        {
            Stop();
        }

        Directory.Delete(folder, recursive: true);
    }

    private static DateTimeOffset Year(int year) => new(year, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private static bool IsRoot => Environment.UserName == "root";

    private static string? Programs() => !Directory.Exists("/usr/lib/postgresql") ? null
        : Directory.GetDirectories("/usr/lib/postgresql").Where(d => File.Exists(Path.Combine(d, "bin", "pg_ctl")))
            .OrderByDescending(d => int.TryParse(Path.GetFileName(d), out var n) ? n : 0).Select(d => Path.Combine(d, "bin")).FirstOrDefault();

    private static void Give(string path)
    {
        if (IsRoot)
        {
            Run("chown", "-R", "postgres", path);
        }
    }

    private static void As(string program, params string[] arguments)
    {
        var full = Path.Combine(Programs()!, program);
        if (IsRoot)
        {
            Run("runuser", ["-u", "postgres", "--", full, .. arguments]);
        }
        else
        {
            Run(full, arguments);
        }
    }

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = "/", RedirectStandardError = true, RedirectStandardOutput = true })!;
        process.WaitForExit(60_000).Should().BeTrue($"{program} should end");
        process.ExitCode.Should().Be(0, $"{program} {string.Join(' ', arguments)}");
    }

    internal static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private sealed class CertificateAuthority
    {
        private readonly ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        private readonly X509Certificate2 root;

        public CertificateAuthority()
        {
            var request = new CertificateRequest("CN=Tollbooth test root", key, HashAlgorithmName.SHA256);
            request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
            root = request.CreateSelfSigned(Year(2010), Year(2110));
        }

        public string Certificate => root.ExportCertificatePem();

        public (string Certificate, string Key) Issue(string host, DateTimeOffset from, DateTimeOffset until)
        {
            using var own = ECDsa.Create(ECCurve.NamedCurves.nistP256);
            var request = new CertificateRequest($"CN={host}", own, HashAlgorithmName.SHA256);
            var names = new SubjectAlternativeNameBuilder();
            names.AddDnsName(host);
            request.CertificateExtensions.Add(names.Build());
            using var issued = request.Create(root, from, until, RandomNumberGenerator.GetBytes(8));
            return (issued.ExportCertificatePem(), own.ExportPkcs8PrivateKeyPem());
        }
    }
}

/// <summary>One server for all tests that need one.</summary>
[CollectionDefinition(nameof(PostgresServer))]
public sealed class PostgresServerCollection : ICollectionFixture<PostgresServer>;

/// <summary>A test that needs a PostgreSQL; where none is installed it is left out, and says so. .ci/run installs one and leaves none out.</summary>
public sealed class PostgresFactAttribute : FactAttribute
{
    /// <summary>Looks for it.</summary>
    public PostgresFactAttribute() => Skip = Environment.GetEnvironmentVariable("RACKSIDE_NEEDS_POSTGRES") == "1" ? null : PostgresServer.Missing;
}
