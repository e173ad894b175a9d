namespace RackSide.Pages.Lifters;

/// <summary>A few lines to choose one from, under a word of what they are about; the last one leads back, and so does <c>/</c>.</summary>
/// <param name="title">Where we are.</param>
/// <param name="above">What is to be known before choosing.</param>
/// <param name="lines">At most nine.</param>
/// <param name="at">The line marked first, from 0.</param>
public sealed class ChoiceConversation(string title, IReadOnlyList<string> above, IReadOnlyList<string> lines, int at = 0) : StillConversation
{
    private int marked = at;

    /// <summary>The line chosen, from 0; null until one is.</summary>
    public int? Chosen { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => Chosen is not null;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage(title, [.. lines.Select(l => new ListLine(l))], marked)
    {
        Above = above,
        Hints = [new("ENTER", "choose"), new($"1-{lines.Count}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? marked : ListPage.Move(key, marked, lines.Count);
        marked = line ?? marked;
        Chosen = key.IsBack() || key.Digit() == 0 ? lines.Count - 1
            : key.IsAccept() || (line is not null && key.Digit() is not null) ? marked
            : null;
        return line is null && Chosen is null ? Notice.DeadKey : null;
    }
}
