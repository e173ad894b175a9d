using NodaTime;
using RackSide.Pages.Rack;

namespace RackSide.Pages.Plain;

/// <summary>
/// Which lines are worth saying: a new page whole, after a key what changed, and of a clock no more than the half minute,
/// the last ten seconds and its end. A screen reader reads out every line, so a line too many is a line in the way.
/// </summary>
public sealed class PlainSpeech
{
    private static readonly Duration[] Told = [Duration.FromSeconds(30), Duration.FromSeconds(10)];

    private PlainPage? said;
    private Duration? left;

    /// <summary>What to say of the page as it stands after a key.</summary>
    public IReadOnlyList<string> AfterKeys(PlainPage page) => Say(page, changes: true);

    /// <summary>What to say of the page that time alone has brought about; mostly nothing.</summary>
    public IReadOnlyList<string> AfterTime(PlainPage page)
    {
        if (said is not { } before || page.Tells.Topic != before.Tells.Topic)
        {
            return Say(page, changes: false);
        }

        List<string> lines = [];
        if (page.Tells.State != before.Tells.State)
        {
            lines.Add(page.Tells.State);
            said = before with { Tells = page.Tells };
        }

        if (Crossed(page.Tells.Left) is { } mark)
        {
            lines.Add($"{Words.Clock(mark)} left");
        }

        left = page.Tells.Left;
        return lines;
    }

    /// <summary>The whole page again.</summary>
    public IReadOnlyList<string> Again(PlainPage page) => Whole(page);

    private IReadOnlyList<string> Say(PlainPage page, bool changes)
    {
        if (said is not { } before || page.Tells.Topic != before.Tells.Topic || !changes)
        {
            return Whole(page);
        }

        (said, left) = (page, page.Tells.Left);
        List<string> lines = [.. page.Lines.Except(before.Lines)];
        return lines.Count == 0 && page.Keys == before.Keys ? ["nothing changed"]
            : page.Keys == before.Keys ? lines
            : [.. lines, page.Keys];
    }

    private IReadOnlyList<string> Whole(PlainPage page)
    {
        (said, left) = (page, page.Tells.Left);
        return [.. page.Lines, page.Keys];
    }

    /// <summary>The mark a running clock has just passed; the nearest to its end where time jumped over several.</summary>
    private Duration? Crossed(Duration? now) => left is { } before && now is { } after && after > Duration.Zero
        ? Told.Where(mark => before > mark && after <= mark).Cast<Duration?>().LastOrDefault()
        : null;
}
