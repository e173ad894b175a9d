using System.CommandLine;
using System.Text;
using RackSide.Exchange;
using RackSide.Logbook;
using RackSide.Places;

namespace RackSide.Commands;

/// <summary><c>rackside export</c>: a lifter's or the household's record as one JSON file or as tables; docs/export.md describes them.</summary>
internal sealed class ExportCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string?> file = new("file")
    {
        Description = "The file to write; the standard output if not said, or -.",
        HelpName = "FILE",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> csv = new("--csv") { Description = "Write tables for a spreadsheet into this folder: lifters, sessions, sets, weigh-ins, days.", HelpName = "DIR" };

    /// <summary>The command.</summary>
    public ExportCommand(RackSideCommand root, Surroundings around)
        : base("export", "Everybody's record as one JSON file that other programs and people can read; with --lifter, one lifter's.")
    {
        (this.root, this.around) = (root, around);
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        Options.Add(csv);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false, looks: true);
        around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        var who = parsed.GetValue(root.Who) is { } name ? gym.Named(name, "--lifter") : null;
        var snapshot = gym.Snapshot() ?? throw new Refusal(ExitCode.NoInput, $"{gym.Folders.Data}: there is no logbook yet, so there is nothing to export");
        var folder = parsed.GetValue(csv);
        if (folder is not null)
        {
            Tables(folder, new CsvTables(snapshot, who is null ? snapshot.Lifters() : [who], gym.Catalogue));
        }

        if (folder is null || parsed.GetValue(file) is not null)
        {
            // Of everybody it holds what the logbook holds; reading ten years back only to count them takes a second.
            var record = LogbookRecord.Write(snapshot, who?.Key, gym.Clock.GetCurrentInstant());
            Record(parsed.GetValue(file), record, who is null ? snapshot.Counts : LogbookRecord.Read(record).Counts);
        }

        return ExitCode.Ok;
    }

    private void Record(string? path, byte[] record, LogbookCounts counts)
    {
        if (path is null or "-")
        {
            around.Out.WriteLine(Encoding.UTF8.GetString(record));
            return;
        }

        Write(path, record);
        around.Error.Print(PlainText.Wrap($"rackside: {path}: {CountsText.Of(counts)}"));
    }

    private void Tables(string folder, CsvTables tables)
    {
        try
        {
            PrivateFolder.Make(folder);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"{folder} cannot be made: {trouble.Message}");
        }

        foreach (var (name, text) in tables.All())
        {
            var path = Path.Combine(folder, name);
            Write(path, Encoding.UTF8.GetBytes(text));
            around.Error.Print([$"rackside: {path}"]);
        }
    }

    private static void Write(string path, byte[] record)
    {
        try
        {
            PrivateFile.Write(path, record);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new Refusal(ExitCode.CannotCreate, $"{path} cannot be written: {trouble.Message}");
        }
    }
}
