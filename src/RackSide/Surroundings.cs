namespace RackSide;

/// <summary>What the program meets outside: its variables and its two streams. Tests hand in their own.</summary>
/// <param name="Environment">Gives the value of a variable, or null.</param>
/// <param name="Out">Data.</param>
/// <param name="Error">Messages.</param>
internal sealed record Surroundings(Func<string, string?> Environment, TextWriter Out, TextWriter Error)
{
    /// <summary>What is typed, line by line.</summary>
    public TextReader In { get; init; } = TextReader.Null;

    /// <summary>The size of the terminal that data goes to, asked for each time; null where data goes elsewhere.</summary>
    public Func<(int Columns, int Rows)?> TerminalSize { get; init; } = () => null;

    /// <summary>The folders of USB sticks and other disks that are mounted, which a copy can go to.</summary>
    public Func<IReadOnlyList<string>> Sticks { get; init; } = () => [];

    /// <summary>Asks the person at the terminal, and gives the line typed; null where nobody is there to ask.</summary>
    public Func<string, string?> Ask { get; init; } = _ => null;
}
