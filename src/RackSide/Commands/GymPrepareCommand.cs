using System.CommandLine;
using RackSide.Racks;

namespace RackSide.Commands;

/// <summary><c>rackside gym prepare</c>: makes the gym's tables, once, as the database's owner.</summary>
internal sealed class GymPrepareCommand : Command
{
    private readonly Surroundings around;

    private readonly Argument<string> connection = new("connection")
    {
        Description = "The server, as its owner: \"Host=gym.local;Database=gym;Username=gym_owner\".",
        HelpName = "CONNECTION",
    };

    private readonly Option<string?> file = GymPassword.Option();
    private readonly Option<string?> role = new("--role") { Description = "The racks' role, which may then read and add, and nothing else.", HelpName = "ROLE" };

    /// <summary>The command.</summary>
    public GymPrepareCommand(Surroundings around)
        : base("prepare", "Makes the tables of a gym in a database, or brings them to this version. Run again it changes nothing.")
    {
        this.around = around;
        connection.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(connection);
        Options.Add(file);
        Options.Add(role);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var may = parsed.GetValue(role);
        return GymCommand.With(new GymServerFile(parsed.GetValue(connection)!, GymPassword.Full(parsed.GetValue(file))), around, link =>
        {
            link.Prepare(may);
            around.Out.Print(PlainText.Wrap($"the gym {link.Identity()} is prepared{(may is null ? "" : $"; {may} may read and add there")}"));
            return ExitCode.Ok;
        });
    }
}

/// <summary>Where a gym's password is. There is no option for the password itself.</summary>
internal static class GymPassword
{
    /// <summary>The option.</summary>
    public static Option<string?> Option() =>
        new("--password-file") { Description = "The file with the password, for its owner only (0600); PGPASSWORD if not said.", HelpName = "FILE" };

    /// <summary>The file from whatever folder the rack is started in.</summary>
    public static string? Full(string? file) => file is null ? null : Path.GetFullPath(file);
}
