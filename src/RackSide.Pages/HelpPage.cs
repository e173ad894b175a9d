using RackSide.Pages.Rack;

namespace RackSide.Pages;

/// <summary>The keys, laid over any page outside a session.</summary>
public static class HelpPage
{
    /// <summary>The page.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="movedOn">How many lines were moved on, on a page too small for all keys.</param>
    public static Page Draw(PageSize size, int movedOn = 0) => new TextPage("THE KEYS", [.. HelpLines.Outside(BodyText.Width(size))])
    {
        MovedOn = movedOn,
        Hints = [new("ENTER", "back")],
    }.Draw(size);
}
