using System.Globalization;
using System.Security.Cryptography;

namespace RackSide.Kiosk;

/// <summary>
/// What is kept of a PIN: PBKDF2 (RFC 8018) with HMAC-SHA-256 over a salt of its own, as <c>pbkdf2-sha256:rounds:salt:hash</c>.
/// Four digits are ten thousand guesses, so whoever takes the card home finds them; it keeps siblings off, not thieves.
/// </summary>
internal static class PinProof
{
    // OWASP's password storage guide asks for this many with HMAC-SHA-256 (from memory). A small board takes about a second.
    private const int Rounds = 600_000;
    private const int SaltBytes = 16;
    private const int HashBytes = 32;
    private const string Kind = "pbkdf2-sha256";

    /// <summary>What proves a PIN.</summary>
    public static string Of(string pin)
    {
        var salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return string.Create(CultureInfo.InvariantCulture, $"{Kind}:{Rounds}:{Convert.ToHexStringLower(salt)}:{Convert.ToHexStringLower(Hash(pin, salt, Rounds))}");
    }

    /// <summary>Whether a PIN is the one proved. A proof that cannot be read matches none.</summary>
    public static bool Matches(string proof, string pin) =>
        proof.Split(':') is [Kind, var rounds, var salt, var hash]
        && int.TryParse(rounds, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count > 0
        && Bytes(salt) is { } known && Bytes(hash) is { } wanted
        && CryptographicOperations.FixedTimeEquals(Hash(pin, known, count), wanted);

    private static byte[] Hash(string pin, byte[] salt, int rounds) =>
        Rfc2898DeriveBytes.Pbkdf2(pin, salt, rounds, HashAlgorithmName.SHA256, HashBytes);

    private static byte[]? Bytes(string hex)
    {
        try
        {
            return Convert.FromHexString(hex);
        }
        catch (FormatException)
        {
            return null;
        }
    }
}
