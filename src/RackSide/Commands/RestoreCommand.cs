using System.CommandLine;
using RackSide.Logbook;

namespace RackSide.Commands;

/// <summary><c>rackside restore</c>: a backup in the logbook's place, after it was shown what that changes.</summary>
internal sealed class RestoreCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string> file = new("file") { Description = "The backup: a file that rackside backup wrote, or the screen on a stick.", HelpName = "FILE" };
    private readonly Option<bool> logbookOnly = new("--logbook-only") { Description = "Leave gym.yaml as it is." };
    private readonly Option<bool> yes = new(AskFirst.YesName) { Description = "Do not ask." };

    /// <summary>The command.</summary>
    public RestoreCommand(RackSideCommand root, Surroundings around)
        : base("restore", "Puts a backup in the logbook's place: shows what that changes, asks, and keeps the old one.")
    {
        (this.root, this.around) = (root, around);
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        Options.Add(logbookOnly);
        Options.Add(yes);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var name = parsed.GetValue(file)!;
        var backup = Read(name);
        using var gym = OpenOrPutAside(parsed, backup, out var aside);
        around.Error.Print(gym.Report is { } report && aside is null ? PlainText.Wrap($"rackside: {report}") : []);
        var here = gym.Snapshot()!;
        around.Out.Print(RestoreText.Lines(name, backup, aside is null ? here : null));
        var rules = new RulesInBackup(backup, gym.Folders);
        around.Out.Print(rules.Lines().SelectMany(l => PlainText.Wrap(l)));
        if (aside is null && !around.Confirmed(parsed.GetValue(yes), "restore", "Put it in the logbook's place?"))
        {
            around.Out.Print(["nothing was changed"]);
            return ExitCode.Ok;
        }

        var takesRules = TakesRules(parsed, rules);
        var kept = aside ?? [Path.Combine(gym.BackupFolder, new Backups(gym.BackupFolder).KeepAside(here, "before-restore", gym.Today))];
        ((LiteLogbook)gym.Logbook).ReplaceBy(backup);
        around.Out.Print([.. PlainText.Wrap($"restored: {CountsText.Of(backup.Counts)}"), .. kept.Select(k => $"the old one is kept as {k}")]);
        around.Out.Print(takesRules ? PlainText.Wrap(PutInPlace(rules)) : []);
        return ExitCode.Ok;
    }

    private bool TakesRules(ParseResult parsed, RulesInBackup rules) => rules.Differs && !parsed.GetValue(logbookOnly)
        && (!rules.Replaces || around.Confirmed(parsed.GetValue(yes), "restore", "Put its gym.yaml in place of the one here too?"));

    private static string PutInPlace(RulesInBackup rules)
    {
        try
        {
            return rules.PutInPlace();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"the logbook is restored, its gym.yaml could not be written ({e.Message.TrimEnd('.')}); the one here is as it was");
        }
    }

    private static LogbookSnapshot Read(string name)
    {
        if (!File.Exists(name))
        {
            throw new Refusal(ExitCode.NoInput, $"{name}: there is no such file; check the name and the folder");
        }

        try
        {
            return LogbookSnapshot.Of(new FileInfo(name));
        }
        catch (LogbookUnreadableException unreadable)
        {
            throw new Refusal(ExitCode.Data, unreadable.Message);
        }
    }

    // A logbook that cannot be opened is what a backup is for: its files are put aside, and nothing is compared.
    private Gym OpenOrPutAside(ParseResult parsed, LogbookSnapshot backup, out IReadOnlyList<string>? aside)
    {
        aside = null;
        try
        {
            return root.Open(parsed);
        }
        catch (Refusal unreadable) when (unreadable.Code == ExitCode.InputOutput)
        {
            around.Error.Print(PlainText.Wrap($"rackside: {unreadable.Message}"));
            around.Out.Print(PlainText.Wrap($"the backup: {CountsText.Of(backup.Counts)}"));
            if (!around.Confirmed(parsed.GetValue(yes), "restore", "Put the unreadable files aside and the backup in their place?"))
            {
                throw new Refusal(ExitCode.InputOutput, "nothing was changed");
            }

            var folder = root.Places(parsed).Data;
            aside = [.. LiteLogbook.PutAside(folder, root.Today()).Select(n => Path.Combine(folder, n))];
            return root.Open(parsed);
        }
    }
}
