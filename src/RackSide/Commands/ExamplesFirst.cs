using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace RackSide.Commands;

/// <summary>Help that begins with what people came to copy; the rest is written by the library.</summary>
internal sealed class ExamplesFirst : SynchronousCommandLineAction
{
    private readonly HelpAction rest = new() { MaxWidth = PlainText.Width };

    /// <inheritdoc/>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        output.Print(Examples.Of(parseResult.CommandResult.Command).Select(e => $"  {e.Line,-31} {e.Does}"));
        output.WriteLine();
        return rest.Invoke(parseResult);
    }
}
