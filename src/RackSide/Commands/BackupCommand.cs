using System.CommandLine;
using RackSide.Logbook;

namespace RackSide.Commands;

/// <summary><c>rackside backup</c>: the whole logbook in one file, here or on a stick.</summary>
internal sealed class BackupCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string?> folder = new("folder")
    {
        Description = "The folder, such as one on a USB stick; the folder backups beside the logbook if not said.",
        HelpName = "DIR",
        Arity = ArgumentArity.ZeroOrOne,
    };

    /// <summary>The command.</summary>
    public BackupCommand(RackSideCommand root, Surroundings around)
        : base("backup", "Writes the whole logbook and gym.yaml into one file and reads it back.")
    {
        (this.root, this.around) = (root, around);
        folder.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(folder);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false, looks: true);
        around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        var snapshot = gym.Snapshot() ?? throw new Refusal(ExitCode.NoInput, $"{gym.Folders.Data}: there is no logbook yet, so there is nothing to back up");
        var to = Path.GetFullPath(parsed.GetValue(folder) ?? gym.BackupFolder);
        around.Out.Print([$"{Path.Combine(to, Make(gym, snapshot, to))}: {CountsText.Of(snapshot.Counts)}; read back and found whole"]);
        return ExitCode.Ok;
    }

    private static string Make(Gym gym, LogbookSnapshot snapshot, string to)
    {
        try
        {
            return new Backups(to).Make(snapshot, gym.Today);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"{e.Message.TrimEnd('.')}; name another folder, such as one on a USB stick");
        }
    }
}
