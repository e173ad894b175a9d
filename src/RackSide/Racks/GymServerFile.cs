using RackSide.Places;

namespace RackSide.Racks;

/// <summary>How this rack reaches its gym's server: the connection as it was typed, and where the password is. Never the password itself.</summary>
/// <param name="Connection">The connection.</param>
/// <param name="PasswordFile">The file with the password; null for none.</param>
internal sealed record GymServerFile(string Connection, string? PasswordFile)
{
    private const string FileVariable = "RACKSIDE_GYM_PASSWORD_FILE", PasswordVariable = "PGPASSWORD";

    private const UnixFileMode Others =
        UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherExecute;

    /// <summary>Where it lies.</summary>
    public static string PathIn(Folders folders) => Path.Combine(folders.Config, "gym-server");

    /// <summary>What is written there; null where this rack reaches no gym.</summary>
    /// <exception cref="Refusal">It cannot be read.</exception>
    public static GymServerFile? Read(Folders folders)
    {
        try
        {
            return File.Exists(PathIn(folders)) && File.ReadAllLines(PathIn(folders)) is [var connection, .. var rest] ? new(connection, rest is [{ Length: > 0 } file, ..] ? file : null) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.NoInput, $"{PathIn(folders)} cannot be read ({e.Message.TrimEnd('.')})");
        }
    }

    /// <summary>Writes it.</summary>
    public void Keep(Folders folders)
    {
        PrivateFolder.Make(folders.Config);
        PrivateFile.Write(PathIn(folders), System.Text.Encoding.UTF8.GetBytes($"{Connection}\n{PasswordFile}\n"));
    }

    /// <summary>The password: from the file that was named, or that the environment names, or from the environment itself; null for none.</summary>
    /// <exception cref="GymTrouble">The file cannot be read, or others can.</exception>
    public string? Password(Func<string, string?> environment)
    {
        var file = PasswordFile ?? (environment(FileVariable) is { Length: > 0 } named ? named : null);
        return file is null ? environment(PasswordVariable) is { Length: > 0 } said ? said : null : ReadPassword(file);
    }

    private static string ReadPassword(string file)
    {
        try
        {
            return !OperatingSystem.IsWindows() && (File.GetUnixFileMode(file) & Others) != 0
                ? throw new GymTrouble(ExitCode.Config, $"{file}: others can read the gym's password there; chmod 600 it")
                : File.ReadAllText(file).TrimEnd('\r', '\n');
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new GymTrouble(ExitCode.NoInput, $"{file}: the gym's password cannot be read there ({e.Message.Split(" : '")[0].TrimEnd('.')})");
        }
    }
}
