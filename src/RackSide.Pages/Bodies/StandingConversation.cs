using RackSide.Training.Body;

namespace RackSide.Pages.Bodies;

/// <summary>The page of the body and the pages of facts behind it; ENTER and <c>/</c> go back.</summary>
/// <param name="standing">What it shows.</param>
public sealed class StandingConversation(BodyStanding standing) : StillConversation
{
    // Of the longest page of facts on the smallest screen.
    private const int MostLines = 90;

    private TextPage? facts;
    private int movedOn;

    /// <summary>What was asked for; null until something is.</summary>
    public BodyChoice? Choice { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => facts is { } page
        ? (page with { MovedOn = movedOn, Hints = [new("ENTER", "back"), new("!", "stop signs")], Said = said }).Draw(size)
        : new StandingPage(standing)
        {
            MovedOn = movedOn,
            Place = standing.Last?.Weight.ToString() ?? "",
            Hints = [new("ENTER", "back"), new("1", "check-in"), new("2", "your numbers"), new("3-5", "facts: food, sleep", "facts"), new("!", "stop signs")],
            Said = said,
        }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        if (Moved(key) is { } moved)
        {
            movedOn = moved;
            return null;
        }

        return facts is null ? OnStanding(key) : OnFacts(key);
    }

    private string? OnStanding(KeyPress key)
    {
        (Choice, facts) = key.Digit() switch
        {
            1 => (BodyChoice.CheckIn, null),
            2 => (BodyChoice.Profile, null),
            3 => ((BodyChoice?)null, FactPages.Food),
            4 => (null, FactPages.Sleep),
            5 => (null, FactPages.Supplements),
            _ => (IsLeave(key) ? BodyChoice.Back : null, null),
        };
        movedOn = facts is null ? movedOn : 0;
        return Choice is null && facts is null ? Notice.DeadKey : null;
    }

    private string? OnFacts(KeyPress key)
    {
        (facts, movedOn) = IsLeave(key) ? (null, 0) : (facts, movedOn);
        return facts is null ? null : Notice.DeadKey;
    }

    // Minus and down read on, plus and up go back, as on every page that is read.
    private int? Moved(KeyPress key) => TextPage.Move(key, movedOn) is not { } moved ? null
        : moved < movedOn || key.IsMore() || key.IsLineUp() ? moved
        : Math.Min(MostLines, movedOn + 1);

    private static bool IsLeave(KeyPress key) => key.IsAccept() || key.IsBack() || key.Digit() == 0 || KeyTable.VerbOf(key) == Verb.Leave;
}
