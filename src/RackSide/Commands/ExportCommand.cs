using System.CommandLine;
using RackSide.Logbook;
using RackSide.Places;

namespace RackSide.Commands;

/// <summary><c>rackside export</c>: a lifter's or the household's record as one JSON file; docs/export.md describes it.</summary>
internal sealed class ExportCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string?> file = new("file")
    {
        Description = "The file to write; the standard output if not said.",
        HelpName = "FILE",
        Arity = ArgumentArity.ZeroOrOne,
    };

    /// <summary>The command.</summary>
    public ExportCommand(RackSideCommand root, Surroundings around)
        : base("export", "Everybody's record as one JSON file that other programs and people can read; with --lifter, one lifter's.")
    {
        (this.root, this.around) = (root, around);
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false, looks: true);
        around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        var who = parsed.GetValue(root.Who) is { } name ? gym.Named(name, "--lifter") : null;
        var snapshot = gym.Snapshot() ?? throw new Refusal(ExitCode.NoInput, $"{gym.Folders.Data}: there is no logbook yet, so there is nothing to export");
        var record = LogbookRecord.Write(snapshot, who?.Key, gym.Clock.GetCurrentInstant());
        if (parsed.GetValue(file) is { } path)
        {
            Write(path, record);
            var held = LogbookRecord.Read(record).Counts;
            around.Error.Print(PlainText.Wrap($"rackside: {path}: {CountsText.Of(held)}"));
        }
        else
        {
            around.Out.WriteLine(System.Text.Encoding.UTF8.GetString(record));
        }

        return ExitCode.Ok;
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
