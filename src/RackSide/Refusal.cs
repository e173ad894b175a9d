namespace RackSide;

/// <summary>
/// The program cannot do what was asked, and the person who asked can change that: one sentence for the standard error
/// stream, and an exit code. It is thrown only above the rooms that return values, and caught in one place.
/// </summary>
/// <param name="code">The exit code; see <see cref="ExitCode"/>.</param>
/// <param name="sentence">What, where, and what to do.</param>
internal sealed class Refusal(int code, string sentence) : Exception(sentence)
{
    /// <summary>The exit code.</summary>
    public int Code { get; } = code;
}
