using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using RackSide.Files;

namespace RackSide.Commands;

/// <summary>What is wrong with a command line, in one sentence that names what was probably meant.</summary>
internal static class CommandLineMistake
{
    /// <summary>The sentence; null where the command line is understood.</summary>
    public static string? In(ParseResult result) =>
        result.Errors.Count == 0 || result.Action is not (ParseErrorAction or null) ? null
        : result.UnmatchedTokens is [var word, ..] ? Unknown(word, result.CommandResult.Command, result)
        : Other(result.Errors[0]);

    /// <summary>Has an argument refuse what looks like an option, because it is one mistyped.</summary>
    public static void RefuseOptions(ArgumentResult argument)
    {
        if (argument.Tokens.FirstOrDefault(t => t.Value is ['-', _, ..]) is { } token)
        {
            argument.AddError(NoOption(token.Value, (argument.Parent as CommandResult)!.Command));
        }
    }

    private static string Unknown(string word, Command command, ParseResult result) =>
        word is ['-', _, ..] ? NoOption(word, command)
        : command.Subcommands.Count > 0 ? $"there is no command \"{word}\"; {Meant(word, command, command.Subcommands.Select(c => c.Name))}"
        : $"\"{word}\" is one word too many; {See(command)}";

    private static string NoOption(string word, Command command) =>
        $"there is no option {word}; {Meant(word, command, Options(command).Select(o => o.Name))}";

    private static string Other(ParseError error) => error.SymbolResult switch
    {
        OptionResult { Tokens.Count: 0, Option: { HelpName: { } value } option } => $"{option.Name} needs a value: {option.Name} {value}",
        OptionResult { Tokens.Count: > 1, Option: { HelpName: { } value } option } => $"{option.Name} is given more than once; write {option.Name} {value} once",
        CommandResult { Command.Subcommands: { Count: > 0 } subs, Command: var command } =>
            $"{command.Name} needs a command: {PlainText.Or([.. subs.Select(c => c.Name)])}; {See(command)}",
        CommandResult { Command: { Arguments.Count: > 0 } command } => $"{command.Name} needs {command.Arguments[0].HelpName}; {See(command)}",
        ArgumentResult { Tokens.Count: 0, Argument.HelpName: var name, Parent: CommandResult parent } =>
            $"{parent.Command.Name} needs {name}; {See(parent.Command)}",
        _ => PlainText.LinesOf(error.Message).First(),
    };

    private static string Meant(string word, Command command, IEnumerable<string> candidates) =>
        Nearest.To(word, candidates) is { } near ? $"did you mean {near}?" : See(command);

    private static string See(Command command) => $"see {Path(command)} --help";

    private static IEnumerable<Option> Options(Command command) =>
        command.Options.Concat(command.Parents.OfType<Command>().SelectMany(Options).Where(o => o.Recursive));

    private static string Path(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? $"{Path(parent)} {command.Name}" : "rackside";
}
