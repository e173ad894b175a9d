using RackSide.Pages;
using RackSide.Pages.Settings;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace RackSide.Screens;

/// <summary>The one view: it shows the conversation's page over the whole terminal and adds nothing.</summary>
internal sealed class PageView : Runnable
{
    private readonly Func<PageSize, Page> draw;
    private readonly Func<Appearance> appearance;
    private readonly PageBrush brush;

    /// <summary>A view of whatever draws a page of a given size.</summary>
    public PageView(Func<PageSize, Page> draw, Func<Appearance> appearance)
    {
        this.draw = draw;
        this.appearance = appearance;
        brush = new PageBrush(appearance);
        CanFocus = true;
        Title = "RackSide";
    }

    /// <summary>Draws the page as it stands now and sends what differs from what the terminal shows.</summary>
    /// <returns>Whether anything did.</returns>
    public bool Paint()
    {
        if (App?.Driver is not { } driver || driver.Cols <= 0 || driver.Rows <= 0)
        {
            return false;
        }

        var sent = brush.Paint(draw(appearance().Of(driver.Cols, driver.Rows)), driver.GetOutputBuffer());
        if (sent.Length > 0)
        {
            driver.WriteRaw(sent);
        }

        return sent.Length > 0;
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
