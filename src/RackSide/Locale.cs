namespace RackSide;

/// <summary>What the locale says of the terminal's characters, by POSIX's order of the variables.</summary>
internal static class Locale
{
    /// <summary>
    /// Whether only ASCII is safe: a locale is named and its character set is not UTF-8. Where none is named nothing is
    /// known, and a console that starts programs without one speaks UTF-8 today.
    /// </summary>
    public static bool IsSevenBit(Func<string, string?> environment)
    {
        var name = new[] { "LC_ALL", "LC_CTYPE", "LANG" }.Select(environment).FirstOrDefault(v => !string.IsNullOrEmpty(v));
        return name is not null && name.Split('@')[0].Split('.').ElementAtOrDefault(1)?.Replace("-", "", StringComparison.Ordinal).ToLowerInvariant() != "utf8";
    }
}
