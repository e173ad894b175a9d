namespace RackSide.Screens.Waiting;

/// <summary>What the screen's thread sleeps on between one page and the next.</summary>
internal sealed class Stir : IDisposable
{
    private readonly AutoResetEvent bell = new(initialState: false);

    /// <summary>Ends the sleep, or the next one if nobody sleeps now. Any thread may call it.</summary>
    public void Up() => bell.Set();

    /// <summary>Sleeps at most so long.</summary>
    /// <returns>Whether somebody ended it.</returns>
    public bool Sleep(TimeSpan longest) => bell.WaitOne(longest);

    /// <summary>Lets go of the event.</summary>
    public void Dispose() => bell.Dispose();
}
