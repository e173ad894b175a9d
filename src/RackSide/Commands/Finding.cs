namespace RackSide.Commands;

/// <summary>One thing looked at.</summary>
/// <param name="Name">What.</param>
/// <param name="Text">What was found.</param>
/// <param name="Code">The exit code of the trouble it means, or <see cref="ExitCode.Ok"/>.</param>
internal sealed record Finding(string Name, string Text, int Code = ExitCode.Ok)
{
    /// <summary>The line printed.</summary>
    public string Line => $"{Name,-9} {(Code == ExitCode.Ok ? "ok" : "trouble"),-8} {Text}";
}
