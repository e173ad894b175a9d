namespace RackSide.Places;

/// <summary>Folders that only their owner may enter, because body weights are nobody else's business.</summary>
internal static class PrivateFolder
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>Makes a folder where it is missing; one that is there keeps its rights.</summary>
    /// <exception cref="Refusal">It cannot be made.</exception>
    public static void Make(string folder)
    {
        try
        {
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(folder);
            }
            else
            {
                Directory.CreateDirectory(folder, OwnerOnly);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"{folder}: the folder cannot be made; choose another with --data");
        }
    }
}
