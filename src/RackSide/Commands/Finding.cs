namespace RackSide.Commands;

/// <summary>One thing looked at.</summary>
/// <param name="Name">What.</param>
/// <param name="Text">What was found.</param>
/// <param name="Code">The exit code of what is broken, or <see cref="ExitCode.Ok"/>.</param>
internal sealed record Finding(string Name, string Text, int Code = ExitCode.Ok)
{
    /// <summary>Whether it works and should still be looked at.</summary>
    public bool Look { get; init; }

    /// <summary>What to do about it; null where nothing, or where the text says so.</summary>
    public string? Remedy { get; init; }

    /// <summary><c>ok</c>, <c>look</c> (it works; look at this) or <c>broken</c>.</summary>
    public string State => Code != ExitCode.Ok ? "broken" : Look ? "look" : "ok";

    /// <summary>The line printed.</summary>
    public string Line => $"{Name,-9} {State,-8} {Text}{(Remedy is null ? "" : $"; {Remedy}")}";
}
