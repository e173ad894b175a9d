using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace RackSide.Commands;

/// <summary>Help that begins with what people came to copy; the rest is written by the library.</summary>
internal sealed class ExamplesFirst : SynchronousCommandLineAction
{
    private const int Column = 32;

    private readonly HelpAction rest = new() { MaxWidth = PlainText.Width };

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        output.Print(Examples.Of(parseResult.CommandResult.Command).SelectMany(e => Told(e.Line, e.Does)));
        output.WriteLine();
        return rest.Invoke(parseResult);
    }

    /// <summary>A long line to copy has what it does on the line below.</summary>
    private static IEnumerable<string> Told(string line, string does) => line.Length < Column && Column + 2 + does.Length <= PlainText.Width
        ? [$"  {line.PadRight(Column)}{does}"]
        : [$"  {line}", $"      {does}"];
}
