using System.CommandLine;
using RackSide.Arrivals;
using RackSide.Logbook;

namespace RackSide.Commands;

/// <summary><c>rackside erase</c>: a lifter and all that is theirs, out of the logbook, its copy, its journal and its backups.</summary>
internal sealed class EraseCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string[]> who = new("who") { Description = "The lifter's name.", HelpName = "LIFTER", Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> yes = new(AskFirst.YesName) { Description = "Do not ask." };

    /// <summary>The command.</summary>
    public EraseCommand(RackSideCommand root, Surroundings around)
        : base("erase", "Erases a lifter for good: from the logbook, its copy, its journal and its backups. Asks first.")
    {
        (this.root, this.around) = (root, around);
        who.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(who);
        Options.Add(yes);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false);
        var lifter = gym.Named(string.Join(' ', parsed.GetValue(who)!), "erase");
        var book = (LiteLogbook)gym.Logbook;
        around.Out.Print(PlainText.Wrap(
            $"{lifter.Name}: {CountsText.Count(book.Sessions(lifter.Key).Count, "session")}, {CountsText.Count(book.WeighIns(lifter.Key).Count, "weigh-in")}, "
            + $"and what was told outside sessions. Backups in {gym.BackupFolder} are rewritten without them; files put aside as damaged are deleted. "
            + "Files you copied elsewhere are not reached. This cannot be taken back; rackside export keeps a copy first."));
        if (!around.Confirmed(parsed.GetValue(yes), "erase", $"Erase {lifter.Name} for good?"))
        {
            around.Out.Print(["nothing was changed"]);
            return ExitCode.Ok;
        }

        KeptPages.Forget(gym.Folders);
        var done = book.Erase(lifter.Key);
        around.Out.Print(
        [
            .. PlainText.Wrap($"erased: {lifter.Name}; {CountsText.Count(done.Rewritten, "backup")} rewritten"),
            .. done.Deleted.Select(name => $"deleted, because it could not be read: {name}"),
        ]);
        return ExitCode.Ok;
    }
}
