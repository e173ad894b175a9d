namespace RackSide.Screens.Waiting;

/// <summary>Gives memory back that a burst of work left behind, while nobody presses a key.</summary>
/// <remarks>
/// Planning a day from years of log goes through some tens of megabytes in a tenth of a second; then a screen stands for an
/// hour and allocates so little that the collector never looks again. A small board has other uses for them.
/// </remarks>
internal sealed class Tidying
{
    // Less is not worth the few milliseconds.
    private const long Worth = 8 * 1024 * 1024;
    private long tidied;

    /// <summary>Collects where enough was allocated since the last time; takes some milliseconds then.</summary>
    public void Tidy()
    {
        if (GC.GetTotalAllocatedBytes() - tidied > Worth)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Aggressive, blocking: true, compacting: true);
            tidied = GC.GetTotalAllocatedBytes();
        }
    }
}
