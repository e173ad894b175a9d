using System.Net.Security;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace RackSide.Server;

/// <summary>What is wrong with a certificate.</summary>
internal enum CertificateFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>It ran out.</summary>
    RanOut,

    /// <summary>Its time has not come.</summary>
    TooEarly,

    /// <summary>It is from nobody who is trusted here.</summary>
    Untrusted,

    /// <summary>It is another machine's.</summary>
    AnotherName,
}

/// <summary>
/// Holds a server's certificate against the roots that are trusted and the name that was asked for. The client library would do
/// so too, and would only say that something was wrong, which helps nobody to put it right.
/// </summary>
/// <param name="Host">The name that the certificate must have; null where it need have none.</param>
/// <param name="RootFile">The gym's own root; null for those of the machine.</param>
/// <param name="Time">The clock.</param>
internal sealed record Certificates(string? Host, string? RootFile, TimeProvider Time)
{
    /// <summary>What is wrong with one.</summary>
    /// <param name="shown">The server's.</param>
    /// <param name="sent">The chain as it came with it.</param>
    /// <param name="errors">What the platform has against it by the machine's own roots.</param>
    public CertificateFault Of(X509Certificate2 shown, X509Chain? sent, SslPolicyErrors errors)
    {
        var now = Time.GetUtcNow();
        return shown.NotAfter < now ? CertificateFault.RanOut
            : shown.NotBefore > now ? CertificateFault.TooEarly
            : !(RootFile is null ? !errors.HasFlag(SslPolicyErrors.RemoteCertificateChainErrors) : IsFrom(RootFile, shown, sent, now)) ? CertificateFault.Untrusted
            : Host is not null && !shown.MatchesHostname(Host) ? CertificateFault.AnotherName
            : CertificateFault.None;
    }

    private static bool IsFrom(string rootFile, X509Certificate2 shown, X509Chain? sent, DateTimeOffset now)
    {
        using var chain = new X509Chain();
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = now.UtcDateTime;
        chain.ChainPolicy.ExtraStore.AddRange(sent?.ChainElements.Select(e => e.Certificate).ToArray() ?? []);
        try
        {
            chain.ChainPolicy.CustomTrustStore.ImportFromPemFile(rootFile);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or CryptographicException)
        {
            throw new Trouble(TroubleKind.Connection, $"{rootFile}: the root certificate cannot be read there ({e.Message.Split(" : '")[0].TrimEnd('.')})", e);
        }

        return chain.Build(shown);
    }
}
