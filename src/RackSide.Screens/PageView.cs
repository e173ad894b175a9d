using NodaTime;
using RackSide.Pages;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace RackSide.Screens;

/// <summary>The one view: it shows the conversation's page over the whole terminal and adds nothing.</summary>
public sealed class PageView : Runnable
{
    private readonly Func<PageSize, Page> draw;
    private readonly PageBrush brush;

    /// <summary>A view of a conversation.</summary>
    /// <param name="conversation">Whose pages are shown.</param>
    /// <param name="clock">Tells it the time at which it draws.</param>
    /// <param name="colour">Whether the two hues may be used.</param>
    public PageView(IConversation conversation, IClock clock, bool colour)
        : this(size => conversation.Draw(size, clock.GetCurrentInstant()), colour)
    {
    }

    internal PageView(Func<PageSize, Page> draw, bool colour)
    {
        this.draw = draw;
        brush = new PageBrush(colour);
        CanFocus = true;
        Title = "RackSide";
    }

    /// <summary>Draws the page as it stands now and sends what differs from what the terminal shows.</summary>
    public void Paint()
    {
        if (App?.Driver is not { } driver || driver.Cols <= 0 || driver.Rows <= 0)
        {
            return;
        }

        var sent = brush.Paint(draw(new PageSize(driver.Cols, driver.Rows)), driver.GetOutputBuffer());
        if (sent.Length > 0)
        {
            driver.WriteRaw(sent);
        }
    }

    /// <inheritdoc/>
    /// <remarks>Nothing is cleared: blank cells are part of the page, and a cleared cell would be sent twice.</remarks>
    protected override bool OnClearingViewport() => true;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        Paint();
        return true;
    }
}
