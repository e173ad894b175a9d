using System.Diagnostics;

namespace RackSide.Tests.Commands;

/// <summary>The program as a process of its own.</summary>
public sealed class ProgramTests : IDisposable
{
    private readonly PassingFolder home = new();

    [Fact]
    public async Task A_reader_that_went_away_is_no_trouble()
    {
        using var program = Start("today");

        program.StandardOutput.Close();
        var error = await program.StandardError.ReadToEndAsync();
        await program.WaitForExitAsync();

        error.ReplaceLineEndings(" ").TrimEnd().Should().StartWith("rackside: nobody has joined yet").And.EndWith("with a default kit.");
        program.ExitCode.Should().Be(0);
    }

    // Standard S23 of docs/screen.md.
    [Theory]
    [InlineData("--version", 0, "0.1.0")]
    [InlineData("plates 60", 0, "loadable: 60 kg is 20 on each side of the bar")]
    [InlineData("todya", 64, "")]
    public async Task It_ends_with_the_code_of_what_came(string line, int code, string first)
    {
        using var program = Start(line.Split(' '));

        var output = await program.StandardOutput.ReadToEndAsync();
        await program.WaitForExitAsync();

        (program.ExitCode, output.ReplaceLineEndings("\n").Split('\n')[0]).Should().Be((code, first));
    }

    public void Dispose() => home.Dispose();

    private Process Start(params string[] words)
    {
        var start = new ProcessStartInfo(Environment.ProcessPath!, [Path.Combine(AppContext.BaseDirectory, "rackside.dll"), .. words])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["HOME"] = home.Path;
        start.Environment["RACKSIDE_DATA"] = home.Path;
        return Process.Start(start)!;
    }
}
