namespace RackSide.Logbook;

/// <summary>The logbook could not be opened, and nothing in it was thrown away; its message is a sentence for the lifter.</summary>
public sealed class LogbookUnreadableException : IOException
{
    /// <summary>With that sentence.</summary>
    public LogbookUnreadableException(string message, Exception? inner = null)
        : base(message, inner)
    {
    }
}
