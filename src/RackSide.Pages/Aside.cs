namespace RackSide.Pages;

/// <summary>
/// What lies over a page to be read, the stop signs or the keys. No clock stops for it, and any key but up and down takes it
/// away again.
/// </summary>
public sealed class Aside
{
    private Func<PageSize, int, Page>? shown;
    private int movedOn;

    /// <summary>The page that lies over the other; null where none does.</summary>
    public Page? Draw(PageSize size) => shown?.Invoke(size, movedOn);

    /// <summary>Takes a key that opens such a page, and every key while one is open.</summary>
    /// <param name="key">The key.</param>
    /// <param name="typed">Whether a key for the keys is typed into the page below instead; null where nothing is typed there.</param>
    /// <returns>Whether the key was for it; then the page below must not see it.</returns>
    public bool Takes(KeyPress key, Func<bool>? typed = null)
    {
        if (shown is not null)
        {
            (shown, movedOn) = TextPage.Move(key, movedOn) is { } moved ? (shown, moved) : (null, 0);
            return true;
        }

        shown = key.IsStopSigns() ? StopSignsPage.Draw : key.IsHelp() && typed?.Invoke() != true ? HelpPage.Draw : null;
        return shown is not null;
    }
}
