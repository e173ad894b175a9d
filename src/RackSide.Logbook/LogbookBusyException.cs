namespace RackSide.Logbook;

/// <summary>The logbook is open in another process; its message is a sentence for the lifter.</summary>
public sealed class LogbookBusyException : IOException
{
    /// <summary>For the logbook in that folder.</summary>
    public LogbookBusyException(string folder)
        : base($"The logbook in {folder} is already open in another window on this machine.") => Folder = folder;

    /// <summary>Where the logbook is.</summary>
    public string Folder { get; }
}
