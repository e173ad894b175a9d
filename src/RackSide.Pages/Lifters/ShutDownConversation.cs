namespace RackSide.Pages.Lifters;

/// <summary>Whether the board is to go off. Every set is on disk by then.</summary>
public sealed class ShutDownConversation : StillConversation
{
    private int chosen = 1;

    /// <inheritdoc/>
    public override bool Ended => ShutDown is not null;

    /// <summary>Whether to; null until it is chosen.</summary>
    public bool? ShutDown { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage("SHUT DOWN?", [new("shut down"), new("back, go on")], chosen)
    {
        Above = ["All is written. When the screen has gone dark the plug may be pulled."],
        Hints = [new("ENTER", "choose"), new("1-2", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, 2);
        chosen = line ?? chosen;
        ShutDown = key.IsBack() || key.Digit() == 0 ? false
            : key.IsAccept() || (line is not null && key.Digit() is not null) ? chosen == 0
            : null;
        return line is null && ShutDown is null ? Notice.DeadKey : null;
    }
}
