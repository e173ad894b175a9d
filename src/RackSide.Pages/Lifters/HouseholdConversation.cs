namespace RackSide.Pages.Lifters;

/// <summary>What else a household does at the rack.</summary>
public enum HouseholdChoice
{
    /// <summary>Back to the names.</summary>
    Back,

    /// <summary>Somebody new.</summary>
    Join,

    /// <summary>A name, a PIN, a unit, a plan.</summary>
    Change,

    /// <summary>Two on one bar.</summary>
    Two,

    /// <summary>Backup and restore.</summary>
    Stick,

    /// <summary>The board goes off.</summary>
    ShutDown,
}

/// <summary>The short list behind the names.</summary>
/// <param name="offered">What there is; <see cref="HouseholdChoice.Back"/> comes last by itself.</param>
public sealed class HouseholdConversation(IEnumerable<HouseholdChoice> offered) : StillConversation
{
    private readonly HouseholdChoice[] lines = [.. offered, HouseholdChoice.Back];
    private int chosen;

    /// <summary>What was chosen; null until something is.</summary>
    public HouseholdChoice? Choice { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => Choice is not null;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new ListPage("THIS RACK", [.. lines.Select(l => new ListLine(Text(l)))], chosen)
    {
        Hints = [new("ENTER", "choose"), new($"1-{lines.Length}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, lines.Length);
        chosen = line ?? chosen;
        Choice = key.IsBack() || key.Digit() == 0 ? HouseholdChoice.Back
            : key.IsAccept() || (line is not null && key.Digit() is not null) ? lines[chosen]
            : null;
        return line is null && Choice is null ? Notice.DeadKey : null;
    }

    private static string Text(HouseholdChoice choice) => choice switch
    {
        HouseholdChoice.Join => "somebody new joins",
        HouseholdChoice.Change => "change a lifter: name, unit, PIN, plan",
        HouseholdChoice.Two => "two train on one bar",
        HouseholdChoice.Stick => "memory stick: backup, restore",
        HouseholdChoice.ShutDown => "shut down",
        _ => "back to the names",
    };
}
