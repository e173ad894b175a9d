using RackSide.EndToEnd.Driving;

namespace RackSide.EndToEnd.Demo;

/// <summary>The demo on the real program: it opens on a strength day, and its folder is gone however the stay ends.</summary>
public sealed class DemoTests : IDisposable
{
    private readonly string temporary = Directory.CreateTempSubdirectory("rackside-tests-").FullName;

    [Fact]
    public async Task It_opens_on_a_strength_day_and_leaves_nothing_behind()
    {
        using var screen = Open();
        (await screen.WaitFor("ENTER begin")).Should().Contain("STRENGTH DAY  Wed 25 Nov").And.Contain("2.5 kg more");
        Directory.GetDirectories(temporary).Should().ContainSingle();

        screen.Press("/");

        (await screen.WaitForEnd()).Should().Be(0);
        screen.Capture().Should().Contain("next: Wed 25 Nov, Strength day");
        Directory.GetDirectories(temporary).Should().BeEmpty();
    }

    [Theory]
    [InlineData("TERM")]
    [InlineData("INT")]
    [InlineData("HUP")]
    public async Task A_signal_that_ends_it_takes_the_folder_along(string signal)
    {
        using var screen = Open("--lifter", "Bram");
        (await screen.WaitFor("ENTER begin")).Should().Contain("10 % lighter");

        screen.Signal(signal);

        await screen.WaitForEnd();
        Directory.GetDirectories(temporary).Should().BeEmpty();
    }

    [Fact]
    public async Task A_plan_with_mistakes_is_told_and_takes_the_folder_along()
    {
        using var screen = Open("--plan", Path.Combine(temporary, "none.yaml"));

        (await screen.WaitForEnd()).Should().BeGreaterThan(0);
        screen.Capture().Should().Contain("rackside: ");
        Directory.GetDirectories(temporary).Should().BeEmpty();
    }

    public void Dispose() => Directory.Delete(temporary, recursive: true);

    private Tmux Open(params string[] more) => Tmux.Start([.. ProgramUnderTest.RackSide, "--demo", .. more], new TerminalSetting
    {
        Environment = new Dictionary<string, string>
        {
            ["TMPDIR"] = temporary,
            ["RACKSIDE_CLOCK"] = "2026-11-25T18:00",
            ["TZ"] = "Europe/London",
        },
    });
}
