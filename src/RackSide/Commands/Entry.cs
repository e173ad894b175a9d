using System.CommandLine;
using RackSide.Logbook;

namespace RackSide.Commands;

/// <summary>The command line: one sentence for a mistake, an exit code of sysexits.h, and never a stack trace.</summary>
internal static class Entry
{
    /// <summary>Set and not empty, it shows what <c>--verbose</c> shows.</summary>
    public const string DebugName = "RACKSIDE_DEBUG";

    /// <summary>Runs the program.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, Surroundings around)
    {
        try
        {
            return Invoke(args, around);
        }
        catch (Refusal refusal)
        {
            return Tell(args, around, refusal, refusal.Message, refusal.Code);
        }
        catch (LogbookBusyException busy)
        {
            return Tell(args, around, busy, busy.Message, ExitCode.Busy);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return Tell(args, around, trouble, trouble.Message, ExitCode.InputOutput);
        }
        catch (Exception fault)
        {
            return Tell(args, around, fault, $"a fault in RackSide stopped it ({fault.GetType().Name}: {FirstLine(fault)}); --verbose shows where", ExitCode.Internal);
        }
    }

    private static int Invoke(string[] args, Surroundings around)
    {
        // No @file: nobody needs long command lines here, and a name may begin with that sign.
        var result = new RackSideCommand(around).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (CommandLineMistake.In(result) is { } sentence)
        {
            throw new Refusal(ExitCode.Usage, sentence);
        }

        return result.Invoke(new InvocationConfiguration
        {
            Output = around.Out,
            Error = around.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = null,
        });
    }

    private static int Tell(string[] args, Surroundings around, Exception trouble, string message, int code)
    {
        foreach (var line in PlainText.LinesOf(message))
        {
            around.Error.WriteLine($"rackside: {line}");
        }

        if (args.Contains(RackSideCommand.VerboseName) || !string.IsNullOrEmpty(around.Environment(DebugName)))
        {
            around.Error.WriteLine(trouble);
        }

        return code;
    }

    private static string FirstLine(Exception fault) => PlainText.LinesOf(fault.Message).FirstOrDefault("");
}
