using System.Net.Sockets;
using System.Security.Authentication;
using Npgsql;

namespace RackSide.Server;

/// <summary>Says in one sentence what a failure means and what to do.</summary>
internal static class Explaining
{
    /// <summary>What it means.</summary>
    /// <param name="fault">What was thrown.</param>
    /// <param name="to">Where the connection goes.</param>
    /// <param name="refused">What was wrong with a certificate that was refused.</param>
    public static Trouble Of(Exception fault, NpgsqlConnectionStringBuilder to, CertificateFault refused) => fault switch
    {
        Trouble known => known,
        _ when Inner<Trouble>(fault) is { } within => within,
        _ when refused is not CertificateFault.None => new Trouble(TroubleKind.Certificate, $"{Where(to)}: {Certificate(refused, to)}", fault),
        PostgresException said => Said(said, to),
        _ when Inner<AuthenticationException>(fault) is not null => new Trouble(TroubleKind.Certificate, $"{Where(to)}: its certificate cannot be trusted; name the gym's own root certificate with \"Root Certificate=FILE\"", fault),
        _ when fault.Message.Contains("SSL", StringComparison.Ordinal) && Inner<SocketException>(fault) is null && Inner<IOException>(fault) is null =>
            new Trouble(TroubleKind.Certificate, $"{Where(to)}: it does not encrypt; switch ssl on at the server (docs/gym.md), or say \"SSL Mode=Disable\" where nobody else is on that network", fault),
        _ when fault.Message.Contains("No password", StringComparison.OrdinalIgnoreCase) => new Trouble(TroubleKind.Rights, $"{Where(to)} asks for a password; put it into a file and name that with --password-file, or set PGPASSWORD", fault),
        _ => new Trouble(TroubleKind.Unreachable, $"{Where(to)} cannot be reached ({Short(fault)}); check that it runs and that this machine is on the network. What was done here waits and is sent later", fault),
    };

    private static string Certificate(CertificateFault fault, NpgsqlConnectionStringBuilder to) => fault switch
    {
        CertificateFault.RanOut => "its certificate has run out; make a new one there, or set this machine's clock if that is wrong",
        CertificateFault.TooEarly => "its certificate is not good yet; set this machine's clock",
        CertificateFault.AnotherName => $"its certificate is for another name; connect by the name that it has, or make one for {to.Host}",
        _ => "its certificate is not one that this machine trusts; name the gym's own root certificate with \"Root Certificate=FILE\"",
    };

    private static Trouble Said(PostgresException said, NpgsqlConnectionStringBuilder to) => said.SqlState switch
    {
        "28P01" => new(TroubleKind.Rights, $"{Where(to)}: the password for \"{to.Username}\" is wrong", said),
        "28000" => new(TroubleKind.Rights, $"{Where(to)}: \"{to.Username}\" may not connect from here ({said.MessageText}); check the role and pg_hba.conf", said),
        "3D000" => new(TroubleKind.Missing, $"{Where(to)}: there is no database \"{to.Database}\"; make it first (docs/gym.md)", said),
        "3F000" or "42P01" or "42883" => new(TroubleKind.Missing, $"{Where(to)}: the database \"{to.Database}\" holds no gym yet; run rackside gym prepare once, as its owner (docs/gym.md)", said),
        "42501" => new(TroubleKind.Rights, $"{Where(to)}: \"{to.Username}\" lacks a right there ({said.MessageText}); run rackside gym prepare with --role {to.Username}, as the owner", said),
        "57P03" or "57P01" or "53300" => new(TroubleKind.Unreachable, $"{Where(to)} takes no connection now ({said.MessageText}); what was done here waits and is sent later", said),
        _ => new(TroubleKind.Other, $"{Where(to)} said: {said.MessageText}", said),
    };

    private static string Where(NpgsqlConnectionStringBuilder to) => $"the gym's server {to.Host}:{to.Port}";

    private static string Short(Exception fault) => (Inner<SocketException>(fault)?.Message ?? Inner<TimeoutException>(fault)?.Message ?? fault.Message).Split('\n')[0].TrimEnd('.');

    private static T? Inner<T>(Exception fault)
        where T : Exception
    {
        for (Exception? e = fault; e is not null; e = e.InnerException)
        {
            if (e is T found)
            {
                return found;
            }
        }

        return null;
    }
}
