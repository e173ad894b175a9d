using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Tests.Commands;

/// <summary>A set known from elsewhere, told on the command line, in a gym of one lifter.</summary>
public sealed class KnownTests : IDisposable
{
    private readonly PassingFolder folder = new();

    public KnownTests()
    {
        var joined = Instant.FromUtc(2026, 11, 1, 18, 0);
        using var logbook = LiteLogbook.Open(folder.Path, joined);
        logbook.Keep(new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, joined));
    }

    [Theory]
    [InlineData("known back squat 60 8", "Barbell back squat: 60 kg x 8")]
    [InlineData("known squat 62,5 8", "Barbell back squat: 62.5 kg x 8")]
    [InlineData("known squat 135lb 5", "Barbell back squat: 135 lb x 5")]
    [InlineData("known squat 60 kg 8", "Barbell back squat: 60 kg x 8")]
    public void A_set_is_kept_and_said(string line, string said)
    {
        var ran = Run(line);

        (ran.Code, ran.Error).Should().Be((0, ""));
        string.Join(' ', ran.Lines).Should().Be($"{said} kept on Mon 2 Nov; the first session here begins below it, with reps to spare.");
    }

    [Fact]
    public void Today_begins_from_it_until_it_is_taken_back()
    {
        Run("known squat 60 8");
        Run("today").Out.ReplaceLineEndings(" ").Should().Contain("why (known-set): first time: you know 60 kg x 8, so 57.5 kg, with reps to");

        Run("known squat --take-back").Lines.Should().Equal("taken back: Barbell back squat, 60 kg x 8, told on Mon 2 Nov");
        Run("today").Out.Should().Contain("why (first-time): first time: start with the empty bar");
    }

    [Theory]
    [InlineData("known", "known needs EXERCISE LOAD REPS; see rackside known --help")]
    [InlineData("known squat 60", "known needs EXERCISE LOAD REPS; see rackside known --help")]
    [InlineData("known squat heavy 8", "\"heavy\" is not a load; write a number such as 62.5, 62,5 or 135lb")]
    [InlineData("known squat 60 0", "Barbell back squat: tell a set of 1 to 12 reps: more of them say little of strength")]
    [InlineData("known squat 60 many", "Barbell back squat: tell a set of 1 to 12 reps: more of them say little of strength")]
    [InlineData("known squat 625 8", "Barbell back squat: tell a load over 0 and up to 300 kg, the bar counted")]
    [InlineData("known push-up 20 8", "Push-up: its load is not all of what is lifted, so no set of it can be begun from")]
    [InlineData("known sqaut 60 8", "no exercise is called \"sqaut\"; did you mean squat?")]
    [InlineData("known squat --take-back", "Barbell back squat: no set was told, so there is nothing to take back")]
    public void What_cannot_be_told_gets_one_sentence(string line, string sentence)
    {
        var ran = Run(line);

        (ran.Code, ran.Out).Should().Be((64, ""));
        ran.ErrorLines.Should().Equal($"rackside: {sentence}");
    }

    public void Dispose() => folder.Dispose();

    private Ran Run(string line) => CommandLine.In(folder.Path, "2026-11-02T18:00").Run(line);
}

/// <summary>An exercise that was trained here goes on from its own sessions.</summary>
[Collection(nameof(Tollbooth))]
public class KnownOfTrainedTests(Tollbooth gym)
{
    [Fact]
    public void A_set_of_an_exercise_that_was_trained_here_is_refused() => gym.On(11).Run("known squat 60 8").ErrorLines.Should().Equal(
        "rackside: Barbell back squat: trained here on Mon 9 Nov, so it goes on from its own sessions");
}
