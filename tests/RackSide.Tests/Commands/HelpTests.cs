using System.CommandLine;
using RackSide.Commands;
using RackSide.Files;

namespace RackSide.Tests.Commands;

[Collection(nameof(Tollbooth))]
public class HelpTests(Tollbooth gym)
{
    private static readonly RackSideCommand Root = new(new Surroundings(_ => null, TextWriter.Null, TextWriter.Null));

    private static readonly IReadOnlyList<(string Path, Command Command)> All = [.. Below("rackside", Root)];

    private static readonly string Docs = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", "commands.md"));

    [Fact]
    public void Help_begins_with_examples_on_every_command()
    {
        foreach (var (path, _) in All)
        {
            var ran = gym.On(11).Run($"{path} --help"["rackside".Length..]);

            (ran.Code, ran.Error).Should().Be((0, ""), path);
            ran.Lines[0].Should().Be("Examples:", path);
            ran.Lines[1].Should().StartWith("  rackside", path);
            ran.Out.Should().NotContain("/?").And.NotContain("/h");
            ran.Lines.Should().OnlyContain(l => l.Length <= 80, path);
        }
    }

    [Fact]
    public void Every_example_runs()
    {
        using var copy = gym.Copy();
        var record = gym.On(11).Run("export").Out;
        foreach (var line in All.SelectMany(c => Examples.Of(c.Command)).Select(e => e.Line).Distinct().Where(l => l != "rackside" && !NeedsAServer(l)))
        {
            var words = line.Split(' ')[1..];
            using var folder = new PassingFolder();
            words = [.. words.Select(w => w switch
            {
                "my-plan.yaml" => folder.File(w, PlanFile.DefaultText),
                "gym.yaml" => Path.Combine(copy.Path, w),
                "training.ics" or "record.json" => folder.File(w, record),
                "sets.csv" => folder.File(w, "date,exercise,reps\n"),
                "my-map.yaml" => folder.File(w, "table: sets\ncolumns:\n  date: date\n  exercise: exercise\n  reps: reps\n"),
                "/media/stick" or "tables" => folder.Path,
                _ when w.EndsWith(".html") => folder.File(w, ""),
                "logbook-2026-11-25.db" => Directory.GetFiles(Path.Combine(copy.Path, "backups"))[0],
                _ => w,
            })];

            // Only one session can be entered for a day, and a plan is chosen by somebody, so each of those examples has a logbook of its own.
            using var own = gym.Copy();
            var where = words[0] is "enter" or "plan" ? own : copy;
            CommandLine.In(where.Path, "2026-11-25T18:00").Answering("y").Typing(new string('\n', 20)).RunWords(words).Code.Should().Be(0, line);
        }
    }

    [Fact]
    public void The_page_of_commands_has_every_command_with_its_words()
    {
        foreach (var (path, command) in All)
        {
            var section = Section(path);
            section.Should().Contain(command.Description, path);
            foreach (var argument in command.Arguments)
            {
                section.Should().Contain($"`{argument.HelpName}`").And.Contain(argument.Description);
            }

            foreach (var option in command.Options)
            {
                section.Should().Contain($"`{option.Name}{(option.HelpName is { } value ? " " + value : "")}`").And.Contain(option.Description);
            }
        }
    }

    [Fact]
    public void The_page_of_commands_has_every_example()
    {
        foreach (var (path, command) in All)
        {
            Examples.Of(command).Should().OnlyContain(e => Section(path).Contains(e.Line), path);
        }
    }

    [Fact]
    public void The_page_of_commands_has_no_command_that_is_gone() =>
        Docs.Split('\n').Where(l => l.StartsWith("## `rackside", StringComparison.Ordinal)).Select(l => l[3..].Trim('`'))
            .Should().BeEquivalentTo(All.Select(c => c.Path));

    [Fact]
    public void The_page_of_commands_has_every_exit_code()
    {
        foreach (var field in typeof(ExitCode).GetFields())
        {
            Docs.Should().Contain($"| {field.GetValue(null)} |", field.Name);
        }
    }

    // Those are run against one in Racks/GymCommandTests.
    private static bool NeedsAServer(string line) => line.StartsWith("rackside gym", StringComparison.Ordinal) && !line.Contains("status", StringComparison.Ordinal);

    private static string Section(string path)
    {
        var from = Docs.IndexOf($"## `{path}`\n", StringComparison.Ordinal);
        from.Should().BeGreaterThan(0, $"docs/commands.md has a section on {path}");
        var to = Docs.IndexOf("\n## ", from, StringComparison.Ordinal);
        return Docs[from..(to < 0 ? Docs.Length : to)];
    }

    private static IEnumerable<(string Path, Command Command)> Below(string path, Command command) =>
        command.Subcommands.SelectMany(c => Below($"{path} {c.Name}", c)).Prepend((path, command));
}
