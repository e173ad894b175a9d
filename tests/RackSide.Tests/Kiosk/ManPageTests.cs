using System.CommandLine;
using System.Diagnostics;
using RackSide.Commands;

namespace RackSide.Tests.Kiosk;

/// <summary>What a package brings beside the program: the manual page and the completion, held against the real commands.</summary>
public class ManPageTests
{
    private static readonly RackSideCommand Root = new(new Surroundings(_ => null, TextWriter.Null, TextWriter.Null));

    [Fact]
    public void The_manual_page_is_that_of_these_commands()
    {
        var file = Path.Combine(Folder(), "kiosk", "rackside.1");
        var made = ManPage.Of(Root);
        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(file, made);
        }

        File.ReadAllText(file).Should().Be(made, "kiosk/rackside.1 is made from the commands; after a change of them run RACKSIDE_ACCEPT=1 dotnet test tests/RackSide.Tests --filter ManPage");
        foreach (var command in All(Root))
        {
            made.Should().Contain(command.Description!.Replace("-", "\\-", StringComparison.Ordinal), command.Name);
        }
    }

    [Theory]
    [InlineData("rackside ")]
    [InlineData("rackside to")]
    [InlineData("rackside today --")]
    [InlineData("rackside plan ch")]
    [InlineData("rackside --da")]
    public void The_completion_offers_what_the_commands_know(string typed)
    {
        var offered = Completed(typed);

        var word = typed[(typed.LastIndexOf(' ') + 1)..];
        var command = typed.Split(' ')[1..^1].Aggregate((Command)Root, (c, name) => c.Subcommands.Single(s => s.Name == name));
        var known = command.Subcommands.Select(c => c.Name)
            .Concat(command.Options.Select(o => o.Name)).Concat(command == Root ? [] : Root.Options.Where(o => o.Recursive).Select(o => o.Name))
            .Where(name => name.StartsWith(word, StringComparison.Ordinal));
        offered.Should().BeEquivalentTo(known.Concat(command.Options.Concat(Root.Options).SelectMany(o => o.Aliases).Where(a => a.StartsWith(word, StringComparison.Ordinal) && offered.Contains(a))).Distinct());
        offered.Should().NotBeEmpty();
    }

    /// <summary>What bash puts into COMPREPLY, with the completion of kiosk/ and the program of this build.</summary>
    private static string[] Completed(string typed)
    {
        var program = Path.Combine(AppContext.BaseDirectory, "rackside.dll");
        var words = typed.Split(' ');
        var script = $"""
            shopt -u progcomp
            complete() {"{ :; }"}
            rackside() {"{"} dotnet '{program}' "$@"; {"}"}
            . '{Path.Combine(Folder(), "kiosk", "rackside.bash")}'
            COMP_LINE='{typed}' COMP_POINT={typed.Length} COMP_CWORD={words.Length - 1}
            COMP_WORDS=({string.Join(' ', words.Select(w => $"'{w}'"))})
            _rackside
            printf '%s\n' "{"${COMPREPLY[@]}"}"
            """;
        var start = new ProcessStartInfo("bash") { ArgumentList = { "--norc", "-c", script }, RedirectStandardOutput = true };
        using var bash = Process.Start(start)!;
        var output = bash.StandardOutput.ReadToEnd();
        bash.WaitForExit();
        return output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static IEnumerable<Command> All(Command command) => command.Subcommands.SelectMany(All).Prepend(command);

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RackSide.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException($"no RackSide.sln above {AppContext.BaseDirectory}");
        }

        return folder.FullName;
    }
}
