using System.Text;

namespace RackSide.Tests.Commands;

public class FaultTests
{
    [Fact]
    public void A_fault_of_the_program_is_one_sentence_and_70()
    {
        using var home = new PassingFolder();
        using var error = new StringWriter();

        var code = CommandLine.At(home.Path, "2026-11-02T18:00").RunTo(new Broken(new InvalidOperationException("a cog fell out")), error, "plates", "60");

        code.Should().Be(70);
        error.ToString().TrimEnd().Split('\n').Should().HaveCount(2).And.HaveElementAt(
            1, "rackside: a fault in RackSide stopped it (InvalidOperationException: a cog fell out); --verbose shows where");
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_details_are_shown_where_they_are_asked_for(bool byFlag)
    {
        using var home = new PassingFolder();
        using var error = new StringWriter();
        var line = CommandLine.At(home.Path, "2026-11-02T18:00").With("RACKSIDE_DEBUG", byFlag ? "" : "1");

        line.RunTo(new Broken(new InvalidOperationException("a cog fell out")), error, byFlag ? ["plates", "60", "--verbose"] : ["plates", "60"]);

        error.ToString().Should().Contain("   at ");
    }

    [Fact]
    public void A_full_disk_behind_the_output_is_told_with_74()
    {
        using var home = new PassingFolder();
        using var error = new StringWriter();

        var code = CommandLine.At(home.Path, "2026-11-02T18:00").RunTo(new Broken(new IOException("No space left on device")), error, "plates", "60");

        code.Should().Be(74);
        error.ToString().Should().EndWith($"rackside: No space left on device{Environment.NewLine}");
    }

    /// <summary>A stream that fails at the first write.</summary>
    private sealed class Broken(Exception with) : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw with;
    }
}
