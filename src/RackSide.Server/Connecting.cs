using System.Net.Security;
using System.Security.Cryptography.X509Certificates;
using Npgsql;

namespace RackSide.Server;

/// <summary>Reads a connection as it was typed, and makes what it means: encrypted and with the server's name checked, unless it says otherwise.</summary>
internal static class Connecting
{
    private const int Patience = 10;

    /// <summary>Reads one.</summary>
    /// <param name="text">As it was typed: <c>Host=...;Database=...;Username=...</c>.</param>
    /// <exception cref="Trouble">It cannot be read, or holds a password.</exception>
    public static NpgsqlConnectionStringBuilder Read(string text)
    {
        NpgsqlConnectionStringBuilder read;
        try
        {
            read = new NpgsqlConnectionStringBuilder(text);
        }
        catch (Exception e) when (e is ArgumentException or FormatException or KeyNotFoundException)
        {
            // The message could repeat what was typed.
            throw new Trouble(TroubleKind.Connection, "that connection cannot be read; write it as \"Host=gym.local;Database=gym;Username=rack\"");
        }

        return read switch
        {
            { Password: { Length: > 0 } } => throw new Trouble(TroubleKind.Connection, "a password does not belong into the connection, where others can read it; put it into a file that only you can read and name that with --password-file, or set PGPASSWORD"),
            { Host: null or "" } => throw new Trouble(TroubleKind.Connection, "that connection names no Host; write it as \"Host=gym.local;Database=gym;Username=rack\""),
            _ => Usual(read, text),
        };
    }

    /// <summary>A source of connections.</summary>
    /// <param name="to">As it was read.</param>
    /// <param name="password">The password, or null.</param>
    /// <param name="time">The clock that certificates are held against.</param>
    /// <param name="refused">Told what is wrong with a certificate that was refused.</param>
    public static NpgsqlDataSource Source(NpgsqlConnectionStringBuilder to, string? password, TimeProvider time, Action<CertificateFault> refused)
    {
        var given = new NpgsqlConnectionStringBuilder(to.ConnectionString) { Password = password };
        var checks = to.SslMode is SslMode.VerifyFull or SslMode.VerifyCA ? new Certificates(to.SslMode is SslMode.VerifyFull ? to.Host : null, to.RootCertificate, time) : null;
        if (checks is not null)
        {
            (given.SslMode, given.RootCertificate) = (SslMode.Require, null);
        }

        var builder = new NpgsqlSlimDataSourceBuilder(given.ConnectionString);
        builder.EnableTransportSecurity();
        builder.EnableArrays();
        if (checks is not null)
        {
            builder.UseSslClientAuthenticationOptionsCallback(options => options.RemoteCertificateValidationCallback = (_, certificate, chain, errors) => Accept(checks, certificate, chain, errors, refused));
        }

        return builder.Build();
    }

    private static bool Accept(Certificates checks, X509Certificate? shown, X509Chain? chain, SslPolicyErrors errors, Action<CertificateFault> refused)
    {
        if (shown is null)
        {
            refused(CertificateFault.Untrusted);
            return false;
        }

        using var certificate = new X509Certificate2(shown);
        var fault = checks.Of(certificate, chain, errors);
        if (fault is not CertificateFault.None)
        {
            refused(fault);
        }

        return fault is CertificateFault.None;
    }

    private static NpgsqlConnectionStringBuilder Usual(NpgsqlConnectionStringBuilder read, string text)
    {
        var said = new System.Data.Common.DbConnectionStringBuilder { ConnectionString = text };
        if (!Says(said, "SSL Mode", "SslMode"))
        {
            read.SslMode = SslMode.VerifyFull;
        }

        if (!Says(said, "Timeout"))
        {
            read.Timeout = Patience;
        }

        // One connection at a time, and none is kept when the program goes.
        (read.Pooling, read.IncludeErrorDetail, read.PersistSecurityInfo, read.ApplicationName) = (false, false, false, "rackside");
        return read;
    }

    private static bool Says(System.Data.Common.DbConnectionStringBuilder said, params string[] names) => names.Any(said.ContainsKey);
}
