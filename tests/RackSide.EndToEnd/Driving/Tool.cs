using System.Diagnostics;

namespace RackSide.EndToEnd.Driving;

/// <summary>Runs a command-line tool of the system to its end.</summary>
internal static class Tool
{
    // What decides over colour or names a terminal must come from the test, not from where the tests were started.
    private static readonly string[] NotInherited = ["NO_COLOR", "FORCE_COLOR", "COLORTERM", "TMUX", "TUI_CONFIG", "DisableRealDriverIO"];

    /// <summary>Runs a tool.</summary>
    /// <returns>What it wrote.</returns>
    /// <exception cref="InvalidOperationException">It failed; the message has what it wrote on standard error.</exception>
    public static string Run(string tool, IEnumerable<string> arguments, bool mayFail = false)
    {
        var start = new ProcessStartInfo(tool, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var variable in NotInherited)
        {
            start.Environment.Remove(variable);
        }

        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 || mayFail
            ? output
            : throw new InvalidOperationException($"{tool} failed with {process.ExitCode}: {error.Result}");
    }
}
