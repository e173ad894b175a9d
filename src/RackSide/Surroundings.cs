namespace RackSide;

/// <summary>What the program meets outside: its variables and its two streams. Tests hand in their own.</summary>
/// <param name="Environment">Gives the value of a variable, or null.</param>
/// <param name="Out">Data.</param>
/// <param name="Error">Messages.</param>
internal sealed record Surroundings(Func<string, string?> Environment, TextWriter Out, TextWriter Error);
