namespace RackSide.Pages.Sharing;

/// <summary>What two lifters are about to do on one bar, before it begins: ENTER begins both sessions.</summary>
/// <param name="plans">Name and plan of each, in a line: <c>Bram: squat 5x5 90 kg, row 3x8 50 kg</c>.</param>
public sealed class ShareConversation(IReadOnlyList<string> plans) : StillConversation
{
    private bool left;

    /// <summary>Whether ENTER was pressed.</summary>
    public bool Begun { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => left;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new TextPage("TWO ON ONE BAR",
    [
        .. plans,
        "You take turns set by set at the bar, in the order that handles the fewest plates; each rests as the plan says. Elsewhere nobody waits.",
        "Each keeps an own log. One may go early or leave at any time: / then *.",
    ])
    {
        Hints = [new("ENTER", "begin, both"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        Begun = key.IsAccept();
        left = Begun || KeyTable.VerbOf(key) is Verb.Menu or Verb.Back or Verb.Leave;
        return left ? null : Notice.DeadKey;
    }
}
