using System.CommandLine;
using RackSide.Logbook;

namespace RackSide.Commands;

/// <summary><c>rackside import</c>: what a record holds and the logbook does not, all of it or nothing; docs/import.md describes it.</summary>
internal sealed class ImportCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string> file = new("file") { Description = "The record: a file that rackside export wrote; or a table, with --map.", HelpName = "FILE" };
    private readonly Option<string?> map = new("--map") { Description = "How to read the table: which column holds what.", HelpName = "MAP" };
    private readonly Option<bool> dry = new("--dry-run") { Description = "Only show what it would add." };
    private readonly Option<bool> yes = new(AskFirst.YesName) { Description = "Do not ask." };

    /// <summary>The command.</summary>
    public ImportCommand(RackSideCommand root, Surroundings around)
        : base("import", "Adds what a record holds and the logbook does not: shows what that is, asks, adds all of it or nothing.")
    {
        (this.root, this.around) = (root, around);
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        Options.Add(map);
        Options.Add(dry);
        Options.Add(yes);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var name = parsed.GetValue(file)!;
        var table = parsed.GetValue(map);
        if (table is null && name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase))
        {
            throw new Refusal(ExitCode.Usage, $"{name}: a table needs --map MAP, a file that says which column holds what; docs/import.md shows one");
        }

        var record = table is null ? Read(name) : null;
        var looks = parsed.GetValue(dry);
        using var gym = root.Open(parsed, begin: !looks, looks: looks);
        around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        return record is null ? Table(parsed, gym, name, table!) : Record(parsed, gym, name, record);
    }

    private int Table(ParseResult parsed, Gym gym, string name, string map)
    {
        var here = gym.Snapshot() ?? LogbookSnapshot.Nothing;
        var import = TableImport.Read(gym, here, name, map, parsed.GetValue(root.Who));
        var looks = parsed.GetValue(dry);
        around.Out.Print(import.Lines());
        if (import.AddsNothing || looks)
        {
            around.Out.Print(looks ? ["a dry run: nothing was changed"] : ["nothing was changed"]);
            return ExitCode.Ok;
        }

        return Put(gym, here, import.Whole(gym, here), parsed.GetValue(yes));
    }

    private int Record(ParseResult parsed, Gym gym, string name, LogbookSnapshot record)
    {
        var looks = parsed.GetValue(dry);
        var here = gym.Snapshot() ?? LogbookSnapshot.Nothing;
        var joined = Join(name, here, record);
        around.Out.Print(ImportText.Lines(name, here, record, joined));
        if (joined.AddsNothing || looks)
        {
            around.Out.Print(looks ? ["a dry run: nothing was changed"] : ["nothing was changed"]);
            return ExitCode.Ok;
        }

        return Put(gym, here, joined.Whole, parsed.GetValue(yes));
    }

    private int Put(Gym gym, LogbookSnapshot here, LogbookSnapshot whole, bool sure)
    {
        if (!around.Confirmed(sure, "import", "Add it to the logbook?"))
        {
            around.Out.Print(["nothing was changed"]);
            return ExitCode.Ok;
        }

        var kept = new Backups(gym.BackupFolder).KeepAside(here, "before-import", gym.Today);
        ((LiteLogbook)gym.Logbook).ReplaceBy(whole);
        around.Out.Print([.. PlainText.Wrap($"imported; the logbook: {CountsText.Of(whole.Counts)}"), $"as it was before it is kept as {Path.Combine(gym.BackupFolder, kept)}"]);
        return ExitCode.Ok;
    }

    private static LogbookSnapshot Read(string name)
    {
        try
        {
            return LogbookRecord.Read(File.ReadAllBytes(name));
        }
        catch (Exception missing) when (missing is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new Refusal(ExitCode.NoInput, $"{name}: there is no such file; check the name and the folder");
        }
        catch (Exception closed) when (closed is IOException or UnauthorizedAccessException && closed is not LogbookUnreadableException)
        {
            throw new Refusal(ExitCode.NoInput, $"{name}: it cannot be read; check that it is a file and that you are allowed to read it");
        }
        catch (LogbookUnreadableException unreadable)
        {
            throw Bad(name, unreadable);
        }
    }

    private static Joined Join(string name, LogbookSnapshot here, LogbookSnapshot record)
    {
        try
        {
            return Joining.Of(here, record);
        }
        catch (LogbookUnreadableException unreadable)
        {
            throw Bad(name, unreadable);
        }
    }

    private static Refusal Bad(string name, LogbookUnreadableException why) =>
        new(ExitCode.Data, $"{name}: {why.Message.TrimEnd('.')}; export it again, or mend that place. Nothing was changed");
}
