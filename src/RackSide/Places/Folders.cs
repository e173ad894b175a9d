namespace RackSide.Places;

/// <summary>Where a gym's files lie, and why there.</summary>
/// <param name="Data">The logbook's folder.</param>
/// <param name="Config">The folder of gym.yaml.</param>
/// <param name="From">What decided it, for <c>rackside check</c>.</param>
internal sealed record Folders(string Data, string Config, string From)
{
    /// <summary>The house rules: kit, units, training days.</summary>
    public string GymFile => Path.Combine(Config, "gym.yaml");

    /// <summary>
    /// Decides the folders: a folder given by flag or by RACKSIDE_DATA holds everything; else the XDG base directories
    /// (specification 0.8), of which values that are not absolute are ignored as it says.
    /// </summary>
    /// <param name="flag">The folder given on the command line, or null.</param>
    /// <param name="environment">Gives the value of a variable, or null.</param>
    public static Folders Find(string? flag, Func<string, string?> environment)
    {
        var (given, from) = flag is not null ? (flag, "--data") : (environment("RACKSIDE_DATA"), "RACKSIDE_DATA");
        if (!string.IsNullOrEmpty(given))
        {
            var folder = Path.GetFullPath(given);
            return new Folders(folder, folder, from);
        }

        var home = environment("HOME") is { Length: > 0 } h ? h : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return new Folders(
            Path.Combine(Base(environment("XDG_DATA_HOME"), home, ".local/share"), "rackside"),
            Path.Combine(Base(environment("XDG_CONFIG_HOME"), home, ".config"), "rackside"),
            "the XDG base directories");
    }

    private static string Base(string? set, string home, string usual) =>
        !string.IsNullOrEmpty(set) && Path.IsPathRooted(set) ? set : Path.Combine(home, usual);
}
