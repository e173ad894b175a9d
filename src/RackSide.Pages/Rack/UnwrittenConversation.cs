using NodaTime;

namespace RackSide.Pages.Rack;

/// <summary>What becomes of entries that no disk took.</summary>
public abstract record UnwrittenChoice
{
    /// <summary>Back to the session, which goes on in memory.</summary>
    public sealed record GoBack : UnwrittenChoice;

    /// <summary>A copy of the logbook that has them.</summary>
    /// <param name="Place">The folder.</param>
    public sealed record CopyTo(string Place) : UnwrittenChoice;

    /// <summary>Leave, with nothing of them but what a copy has.</summary>
    public sealed record LeaveWithout : UnwrittenChoice;

    /// <summary>All of them were written meanwhile.</summary>
    public sealed record AllWritten : UnwrittenChoice;
}

/// <summary>Somebody leaves while entries are not on disk: nothing is given up without a question, and writing goes on being tried under this page.</summary>
public sealed class UnwrittenConversation : StillConversation
{
    /// <summary>The most places that one digit each reaches beside the other lines.</summary>
    public const int MostPlaces = 6;

    private static readonly Duration LookAgain = Duration.FromSeconds(2);

    private readonly Func<(int Count, string? Why)> state;
    private readonly Func<IReadOnlyList<string>> places;
    private readonly bool canGoBack;
    private readonly string? done;
    private readonly bool copied;
    private IReadOnlyList<(string Text, UnwrittenChoice? Choice)> lines;
    private int chosen;
    private Instant looked;

    /// <summary>Asks.</summary>
    /// <param name="state">Gives how many entries are not on disk now, and why in a few words.</param>
    /// <param name="places">Gives the folders a copy can go to now: a stick may be put in while this stands.</param>
    /// <param name="canGoBack">Whether the session is still open.</param>
    /// <param name="done">What came of the last choice, as a sentence; null for nothing.</param>
    /// <param name="copied">Whether a copy has the entries, so that leaving gives nothing up.</param>
    public UnwrittenConversation(
        Func<(int Count, string? Why)> state, Func<IReadOnlyList<string>> places, bool canGoBack, string? done = null, bool copied = false)
    {
        (this.state, this.places, this.canGoBack, this.done, this.copied) = (state, places, canGoBack, done, copied);
        lines = Lines();
        chosen = copied ? lines.Count - 1 : 0;
    }

    /// <summary>What was chosen; null until something is.</summary>
    public UnwrittenChoice? Choice { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <inheritdoc/>
    public override Bell Tick(Instant now)
    {
        Choice ??= state().Count == 0 ? new UnwrittenChoice.AllWritten() : null;
        if (now - looked >= LookAgain)
        {
            looked = now;
            LookForPlaces();
        }

        return Bell.None;
    }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage("NOT WRITTEN YET", [.. lines.Select(l => new ListLine(l.Text))], chosen)
    {
        Above = [done ?? Told()],
        Hints = [new("ENTER", "choose"), new($"1-{lines.Count}", "mark that line"), new("+ -", "up, down"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, lines.Count);
        chosen = line ?? chosen;
        Choice = key.IsAccept() ? lines[chosen].Choice : null;
        return line is null ? Notice.DeadKey : key.IsAccept() && Choice is null ? "Still trying; nothing is given up." : null;
    }

    // The line that was marked stays marked where it still is.
    private void LookForPlaces()
    {
        var marked = lines[chosen];
        lines = Lines();
        chosen = Math.Max(0, lines.ToList().IndexOf(marked));
    }

    private IReadOnlyList<(string Text, UnwrittenChoice? Choice)> Lines() =>
    [
        ("wait here: leaves by itself once all is written", null),
        .. canGoBack ? [("back to the session; it goes on in memory", new UnwrittenChoice.GoBack())] : Array.Empty<(string, UnwrittenChoice?)>(),
        .. places().Take(MostPlaces).Select(p => ($"copy the logbook with them to {p}", (UnwrittenChoice?)new UnwrittenChoice.CopyTo(p))),
        (copied ? "leave; the copy has them" : "leave and give them up", new UnwrittenChoice.LeaveWithout()),
    ];

    private string Told()
    {
        var (count, why) = state();
        return $"{count} {(count == 1 ? "entry of this session is" : "entries of this session are")} not on disk{(why is null ? "" : $": {why}")}. "
            + "They are kept in memory and tried again every two seconds. Free some space, or put in a USB stick for a copy.";
    }
}
