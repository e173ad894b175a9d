using System.CommandLine;
using System.CommandLine.Invocation;

namespace RackSide.Commands;

/// <summary>The command line: one sentence for a mistake, an exit code of sysexits.h, and never a stack trace.</summary>
internal static class Entry
{
    /// <summary>Runs the program.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, Surroundings around)
    {
        try
        {
            var result = new RackSideCommand(around).Parse(args);
            if (result.Action is ParseErrorAction or null && result.Errors.Count > 0)
            {
                around.Error.WriteLine($"rackside: {result.Errors[0].Message} See rackside --help.");
                return ExitCode.Usage;
            }

            return result.Invoke(new InvocationConfiguration
            {
                Output = around.Out,
                Error = around.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            });
        }
        catch (Refusal refusal)
        {
            around.Error.WriteLine(Sentences(refusal.Message));
            return refusal.Code;
        }
        catch (IOException trouble)
        {
            around.Error.WriteLine($"rackside: {trouble.Message}");
            return ExitCode.InputOutput;
        }
    }

    private static string Sentences(string message) =>
        string.Join(Environment.NewLine, message.Split(Environment.NewLine).Select(line => $"rackside: {line}"));
}
