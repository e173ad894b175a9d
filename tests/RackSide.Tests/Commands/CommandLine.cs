using RackSide.Commands;

namespace RackSide.Tests.Commands;

/// <summary>Runs the program in this process, in surroundings of its own.</summary>
internal sealed class CommandLine
{
    private readonly Dictionary<string, string> variables = new() { ["TERM"] = "xterm-256color" };
    private string? answer;

    /// <summary>In a folder that holds everything.</summary>
    public static CommandLine In(string folder, string clock) =>
        new CommandLine().With("RACKSIDE_DATA", folder).With("RACKSIDE_CLOCK", clock);

    /// <summary>In an empty home.</summary>
    public static CommandLine At(string home, string clock) => new CommandLine().With("HOME", home).With("RACKSIDE_CLOCK", clock);

    /// <summary>With a variable.</summary>
    public CommandLine With(string name, string value)
    {
        variables[name] = value;
        return this;
    }

    /// <summary>With somebody there who answers each question so.</summary>
    public CommandLine Answering(string typed)
    {
        answer = typed;
        return this;
    }

    /// <summary>What was asked.</summary>
    public List<string> Asked { get; } = [];

    /// <summary>Runs a command line, its words parted by spaces.</summary>
    public Ran Run(string line) => RunWords(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    /// <summary>Runs a command line of these words.</summary>
    public Ran RunWords(params string[] words)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = RunTo(output, error, words);
        return new Ran(code, output.ToString(), error.ToString());
    }

    /// <summary>Runs a command line into these streams.</summary>
    public int RunTo(TextWriter output, TextWriter error, params string[] words) =>
        Entry.Run(words, new Surroundings(variables.GetValueOrDefault, output, error) { Ask = Answer });

    private string? Answer(string question)
    {
        Asked.Add(question);
        return answer;
    }
}

/// <summary>What came of it.</summary>
internal sealed record Ran(int Code, string Out, string Error)
{
    /// <summary>The lines on the standard output.</summary>
    public string[] Lines => Out.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>The lines on the standard error.</summary>
    public string[] ErrorLines => Error.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
}

/// <summary>A folder that is gone after the test.</summary>
internal sealed class PassingFolder : IDisposable
{
    /// <summary>Where.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("rackside-test-").FullName;

    /// <summary>A file in it.</summary>
    public string File(string name, string text)
    {
        var path = System.IO.Path.Combine(Path, name);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <summary>Everything in it.</summary>
    public IEnumerable<string> Entries => Directory.EnumerateFileSystemEntries(Path, "*", SearchOption.AllDirectories);

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
