namespace RackSide.Pages;

/// <summary>A page that is read and left: cautions, stop signs, help.</summary>
/// <param name="Title">Where we are; the left of the top line.</param>
/// <param name="Paragraphs">What is to be read; one that begins with "- " hangs like a list entry.</param>
public sealed record TextPage(string Title, IReadOnlyList<string> Paragraphs) : BodyPage(Title)
{
    /// <summary>The page. Paragraphs stand apart where there is room; what does not fit is told by a last line of dots.</summary>
    public override Page Draw(PageSize size)
    {
        var parts = Paragraphs.Select(p => BodyText.Lines(p, size)).ToList();
        var lines = BodyText.Stack(parts, spaced: true);
        var fitting = lines.Count <= BodyText.Height(size) ? lines : BodyText.Stack(parts, spaced: false);
        return Draw(size, fitting);
    }
}
