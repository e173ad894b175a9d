namespace RackSide;

/// <summary>The exit codes, as sysexits.h names them.</summary>
internal static class ExitCode
{
    /// <summary>All went well.</summary>
    public const int Ok = 0;

    /// <summary>Somebody at a kiosk chose to shut it down; whoever started the program does that.</summary>
    public const int ShutDown = 20;

    /// <summary>The command line was not understood, or there is no terminal to show a screen on.</summary>
    public const int Usage = 64;

    /// <summary>A file has mistakes in it.</summary>
    public const int Data = 65;

    /// <summary>A file that was named cannot be read.</summary>
    public const int NoInput = 66;

    /// <summary>The gym's server cannot be reached, or holds no gym.</summary>
    public const int Unavailable = 69;

    /// <summary>A fault of the program.</summary>
    public const int Internal = 70;

    /// <summary>A file cannot be created.</summary>
    public const int CannotCreate = 73;

    /// <summary>Reading or writing failed.</summary>
    public const int InputOutput = 74;

    /// <summary>The logbook is open elsewhere.</summary>
    public const int Busy = 75;

    /// <summary>The gym's server cannot be trusted, or is of another version.</summary>
    public const int Protocol = 76;

    /// <summary>The gym's server refuses the password, the role or what it asked for.</summary>
    public const int NoPermission = 77;

    /// <summary>A settings file has mistakes in it.</summary>
    public const int Config = 78;

    /// <summary>Ctrl+C.</summary>
    public const int Interrupted = 130;
}
