using System.CommandLine;
using System.Text;
using RackSide.Commands;

namespace RackSide.Tests.Kiosk;

/// <summary>The manual page, in the macros of mdoc(7), made from the commands themselves so that it cannot tell of others.</summary>
internal static class ManPage
{
    /// <summary>The page's text.</summary>
    public static string Of(RackSideCommand root)
    {
        var text = new StringBuilder();
        Line(text, ".\\\" Made from the commands by the tests of the program; see ManPageTests.", ".Dd November 26, 2026", ".Dt RACKSIDE 1", ".Os RackSide",
            ".Sh NAME", ".Nm rackside", ".Nd training companion beside a squat rack",
            ".Sh SYNOPSIS", ".Nm", ".Op Ar options", ".Op Ar command Op Ar arguments",
            ".Sh DESCRIPTION", Escaped(root.Description!), "Alone it opens the full screen, and leaves with the week in plain lines.", ".Pp", "The options are:");
        Options(text, root);
        Line(text, ".Sh COMMANDS");
        foreach (var command in root.Subcommands)
        {
            Section(text, command.Name, command);
        }

        Ending(text);
        return text.ToString();
    }

    private static void Section(StringBuilder text, string path, Command command)
    {
        Line(text, $".Ss {path}{string.Concat(command.Arguments.Select(a => $" {a.HelpName}"))}", Escaped(command.Description!));
        if (command.Arguments.Count > 0)
        {
            Line(text, ".Bl -tag -width Ds");
            foreach (var argument in command.Arguments)
            {
                Line(text, $".It Ar {Escaped(argument.HelpName ?? argument.Name)}", Escaped(argument.Description ?? ""));
            }

            Line(text, ".El");
        }

        Options(text, command);
        Line(text, ".Pp", "For example:", ".Bd -literal -offset indent -compact");
        Line(text, [.. Examples.Of(command).Select(e => Escaped(e.Line))]);
        Line(text, ".Ed");
        foreach (var below in command.Subcommands)
        {
            Section(text, $"{path} {below.Name}", below);
        }
    }

    private static void Options(StringBuilder text, Command command)
    {
        if (command.Options.Count == 0)
        {
            return;
        }

        Line(text, ".Bl -tag -width Ds");
        foreach (var option in command.Options)
        {
            var names = new[] { option.Name }.Concat(option.Aliases.Where(a => a != option.Name)).Select(n => $"Fl {Escaped(n[1..])}");
            Line(text, $".It {string.Join(" , ", names)}{(option.HelpName is { } value ? $" Ar {Escaped(value)}" : "")}", Escaped(option.Description ?? ""));
        }

        Line(text, ".El");
    }

    private static void Ending(StringBuilder text) => Line(text,
        ".Sh ENVIRONMENT", ".Bl -tag -width Ds",
        ".It Ev RACKSIDE_DATA", "The folder that holds everything, where",
        ".Fl -data", "is not given.",
        ".It Ev RACKSIDE_IDLE", "Minutes without a key after which a kiosk shows the names again; 15 if not set.",
        ".It Ev RACKSIDE_STICK", "Where a kiosk finds a memory stick.",
        ".It Ev NO_COLOR", "Set and not empty, no colour is used.",
        ".It Ev RACKSIDE_DEBUG", "Set and not empty, the details of a fault are shown.",
        ".El",
        ".Sh FILES", ".Bl -tag -width Ds",
        ".It Pa ~/.local/share/rackside", "The logbook.",
        ".It Pa ~/.config/rackside/gym.yaml", "The house rules: unit, kit, training days.",
        ".It Pa /var/lib/rackside", "Both, on a kiosk.",
        ".El",
        ".Sh EXIT STATUS", "0 if all went well, else a code of sysexits: 64 for a command line that is not understood, 65 for a plan with mistakes,",
        "66 for a file that is not there, 70 for a fault of the program, 73 where a file cannot be made, 74 where reading or",
        "writing failed, 75 where the logbook is open elsewhere, 78 for mistakes in gym.yaml or a wrong clock; 130 after Ctrl+C; 20",
        "where somebody at a kiosk chose to shut it down.",
        ".Sh CAVEATS", "RackSide is no clinician and no coach. Stop where it hurts, and ask one of them.");

    private static void Line(StringBuilder text, params string[] lines)
    {
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }
    }

    // A hyphen that is typed must stay one, and a line must not begin with what the macros take for theirs.
    private static string Escaped(string words)
    {
        var escaped = words.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal);
        return escaped is ['.' or '\'', ..] ? "\\&" + escaped : escaped;
    }
}
