namespace RackSide.EndToEnd.Driving;

/// <summary>The terminal a program is started in.</summary>
internal sealed record TerminalSetting
{
    /// <summary>Cells across.</summary>
    public int Columns { get; init; } = 80;

    /// <summary>Cells down.</summary>
    public int Rows { get; init; } = 24;

    /// <summary>What <c>TERM</c> says.</summary>
    public string Type { get; init; } = "tmux-256color";

    /// <summary>Variables the program finds besides the test's own.</summary>
    public IReadOnlyDictionary<string, string> Environment { get; init; } = new Dictionary<string, string>();

    /// <summary>Whether every byte the program sends is kept, from the first on, for <see cref="Tmux.Sent"/>.</summary>
    public bool KeepBytes { get; init; }
}
