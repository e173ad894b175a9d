using NodaTime;
using RackSide.Commands;
using RackSide.Demo;
using RackSide.Training.Schedule;

namespace RackSide.Tests.Demo;

public class DemoGymTests
{
    private static readonly Stopped Clock = new(Instant.FromUtc(2026, 11, 25, 12, 0));

    [Fact]
    public void Its_folder_is_its_owners_alone_and_gone_when_the_gym_closes()
    {
        var gym = DemoGym.Open(null, null, Clock);
        var folder = gym.Folders.Data;

        Directory.GetFiles(folder).Select(Path.GetFileName).Should().Contain("gym.yaml");
        if (!OperatingSystem.IsWindows())
        {
            File.GetUnixFileMode(folder).Should().Be(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        gym.Dispose();

        Directory.Exists(folder).Should().BeFalse();
    }

    [Fact]
    public void Ottoline_trains_unless_another_name_is_told()
    {
        using var gym = DemoGym.Open(null, null, Clock);

        gym.Lifter()!.Name.Should().Be("Ottoline Marsh");
        gym.Lifter("Bram")!.Name.Should().Be("Bram Okafor-Lind");
        gym.Lifter("bram okafor-lind")!.Key.Should().Be("bram");
        var act = () => gym.Lifter("Juno");
        act.Should().Throw<Refusal>().WithMessage("*here train: Ottoline Marsh, Bram Okafor-Lind");
    }

    [Fact]
    public void The_logbook_holds_what_was_lived()
    {
        using var gym = DemoGym.Open(null, null, Clock);
        var lived = new Lived(gym.Today);

        foreach (var lifter in gym.Logbook.Lifters())
        {
            gym.Logbook.Sessions(lifter.Key).Select(s => (s.Head.Date, s.Head.DayKey, s.Facts.Count))
                .Should().Equal(lived.Of(lifter.Key).Select(s => (s.Head.Date, s.Head.DayKey, s.Facts.Count)));
            gym.Logbook.WeighIns(lifter.Key).Should().Equal(lived.WeighIns(lifter.Key));
            gym.Logbook.Open(lifter.Key).Should().BeNull();
            gym.TodaysPlan(lifter).Due.Kind.Should().Be(DueKind.Train);
        }

        gym.Report.Should().BeNull();
        gym.Logbook.NextId().Sequence.Should().BeGreaterThan(lived.All.Max(s => s.Facts.Max(f => f.Id.Sequence)));
    }

    [Fact]
    public void A_folder_is_refused_because_nothing_is_kept()
    {
        using var said = new StringWriter();

        var code = Entry.Run(["today", "--demo", "--data", "here"], new Surroundings(_ => null, TextWriter.Null, said));

        code.Should().Be(ExitCode.Usage);
        said.ToString().Should().StartWith("rackside: --demo keeps nothing").And.NotContain("   at ");
    }

    private sealed class Stopped(Instant now) : IClock
    {
        public Instant GetCurrentInstant() => now;
    }
}
