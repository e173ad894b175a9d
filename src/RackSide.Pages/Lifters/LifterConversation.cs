namespace RackSide.Pages.Lifters;

/// <summary>What can be changed of a lifter.</summary>
public enum LifterChange
{
    /// <summary>Nothing more; back.</summary>
    Back,

    /// <summary>The name.</summary>
    Name,

    /// <summary>The unit, to the other one.</summary>
    Unit,

    /// <summary>The PIN.</summary>
    Pin,

    /// <summary>The plan, to the next one there is.</summary>
    Plan,
}

/// <summary>A lifter as the page of changes shows one.</summary>
/// <param name="Name">The name.</param>
/// <param name="Unit">The unit in words.</param>
/// <param name="Pin">Whether a PIN is asked for.</param>
/// <param name="Plan">The plan by its name.</param>
public sealed record LifterTexts(string Name, string Unit, bool Pin, string Plan);

/// <summary>A lifter's own settings. It ends with one change asked for, and is opened again with what came of it.</summary>
/// <param name="texts">The lifter.</param>
/// <param name="at">The line marked first.</param>
public sealed class LifterConversation(LifterTexts texts, LifterChange at = LifterChange.Name) : StillConversation
{
    private static readonly LifterChange[] Changes = [LifterChange.Name, LifterChange.Unit, LifterChange.Pin, LifterChange.Plan, LifterChange.Back];

    private int chosen = Math.Max(0, Array.IndexOf(Changes, at));

    /// <inheritdoc/>
    public override bool Ended => Change is not null;

    /// <summary>What is to be changed; null until that is chosen.</summary>
    public LifterChange? Change { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage($"LIFTER  {texts.Name}", [.. Changes.Select(Line)], chosen)
    {
        Hints = [new("ENTER", "change"), new($"1-{Changes.Length}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, Changes.Length);
        chosen = line ?? chosen;
        Change = key.IsBack() || key.Digit() == 0 ? LifterChange.Back
            : key.IsAccept() || (line is not null && key.Digit() is not null) ? Changes[chosen]
            : null;
        return line is null && Change is null ? Notice.DeadKey : null;
    }

    private ListLine Line(LifterChange change) => change switch
    {
        LifterChange.Name => new("name", Value: texts.Name),
        LifterChange.Unit => new("unit", Value: texts.Unit),
        LifterChange.Pin => new("PIN", Value: texts.Pin ? "asked for" : "none"),
        LifterChange.Plan => new("plan", Value: texts.Plan),
        _ => new("back", Value: " "),
    };
}
