using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Tests.Commands;

/// <summary>A sore motion told on the command line, in a gym of one lifter.</summary>
public sealed class SoreTests : IDisposable
{
    private readonly PassingFolder folder = new();

    public SoreTests()
    {
        var joined = Instant.FromUtc(2026, 11, 1, 18, 0);
        using var logbook = LiteLogbook.Open(folder.Path, joined);
        logbook.Keep(new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, joined));
    }

    [Theory]
    [InlineData("sore squat", "squat")]
    [InlineData("sore vertical pull", "vertical pull")]
    [InlineData("sore vertical_pull", "vertical pull")]
    [InlineData("sore back-squat", "squat")]
    [InlineData("sore horizontal-press", "horizontal push")]
    public void A_motion_is_told_by_its_name_its_exercise_or_its_slot(string line, string motion)
    {
        var ran = Run(line);

        (ran.Code, ran.Error).Should().Be((0, ""));
        string.Join(' ', ran.Lines).Should().Be(
            $"{motion} told sore on Mon 2 Nov: it is lighter next time. In training, stop if it hurts; if it stays, see a clinician.");
    }

    [Fact]
    public void What_is_asked_for_next_carries_the_caution_until_it_is_taken_back()
    {
        Run("sore squat");

        Run("today").Out.Should().Contain("stop if it hurts; if it stays, see a clinician");
        Run("sore squat --take-back").Lines.Should().Equal("taken back: squat told sore on Mon 2 Nov");
        Run("today").Out.Should().NotContain("stop if it hurts;");
    }

    [Theory]
    [InlineData("sore", "sore needs MOTION; see rackside sore --help")]
    [InlineData("sore elbow", "no exercise is called \"elbow\"; ")]
    [InlineData("sore squat --take-back", "squat was not told sore, so there is nothing to take back")]
    public void What_cannot_be_told_gets_one_sentence(string line, string sentence)
    {
        var ran = Run(line);

        ran.Code.Should().Be(64);
        ran.ErrorLines.Should().ContainSingle().Which.Should().StartWith($"rackside: {sentence}");
    }

    [Fact]
    public void Where_nobody_has_joined_there_is_nobody_to_be_sore()
    {
        using var home = new PassingFolder();

        var ran = CommandLine.At(home.Path, "2026-11-02T18:00").Run("sore squat");

        (ran.Code, ran.Error).Should().Be((64, $"rackside: nobody has joined yet; start rackside to set up{Environment.NewLine}"));
        home.Entries.Should().BeEmpty();
    }

    public void Dispose() => folder.Dispose();

    private Ran Run(string line) => CommandLine.In(folder.Path, "2026-11-02T18:00").Run(line);
}
