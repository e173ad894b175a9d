namespace RackSide.Demo;

/// <summary>
/// A folder that only its owner may enter and that is gone with the program: when it is let go of, or else when the process
/// ends in order, as it does after SIGTERM. Where it cannot be removed, nobody is told, because nobody misses anything.
/// </summary>
internal sealed class TemporaryFolder : IDisposable
{
    /// <summary>How its name begins, beneath the system's folder for such things.</summary>
    public const string NameBegins = "rackside-demo-";

    /// <summary>Makes one.</summary>
    /// <exception cref="Refusal">There is no room for it.</exception>
    public TemporaryFolder()
    {
        try
        {
            Path = Directory.CreateTempSubdirectory(NameBegins).FullName;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"--demo: no temporary folder can be made ({e.Message.TrimEnd('.')}); name one that can be written in TMPDIR");
        }

        AppDomain.CurrentDomain.ProcessExit += Remove;
    }

    /// <summary>Where it is.</summary>
    public string Path { get; }

    /// <summary>Removes it with all that is in it.</summary>
    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= Remove;
        Remove(null, EventArgs.Empty);
    }

    private void Remove(object? sender, EventArgs e)
    {
        try
        {
            Directory.Delete(Path, recursive: true);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // Gone already, or not to be had.
        }
    }
}
