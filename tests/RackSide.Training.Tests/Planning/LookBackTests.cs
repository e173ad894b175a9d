using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Skills;
using static RackSide.Training.Tests.Planning.Tollbooth;

namespace RackSide.Training.Tests.Planning;

/// <summary>What must not be forgotten, however many sessions have come since.</summary>
public class LookBackTests
{
    private static readonly IReadOnlyList<SessionRecord> Years =
        [.. Enumerable.Range(0, 4 * LookBack.Sessions).Select(day => Session(Today(TrainingHistory.Empty, Monday), Monday.PlusDays(7 * day), (p, i) => p.Targets[i]))];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_answer_on_head_down_work_is_kept_for_ever(bool floor)
    {
        var answered = Years[0] with { Facts = [.. Years[0].Facts, new HeadDownAnswered(new FactId("test", 7_777_777), Years[0].Head.Begun, floor)] };

        var read = Read([answered, .. Years.Skip(1)]);

        read.Sessions.Should().HaveCountLessThan(2 * LookBack.Sessions);
        HeadDown.IsAvoided(Ottoline, read).Should().Be(floor);
        HeadDown.IsTaught(read).Should().Be(!floor);
    }

    [Fact]
    public void A_gate_that_a_long_hold_opened_stays_open()
    {
        var hold = new SetDone(new FactId("test", 8_888_888), Years[0].Head.Begun, "core", "plank-forearm", SetKind.Hold, 1, 30, 45, null);
        var asked = Years[0].Head.Prescriptions[0] with { Slot = "core", Exercise = "plank-forearm", Load = null };
        var held = Years[0] with { Head = Years[0].Head with { Prescriptions = [.. Years[0].Head.Prescriptions, asked] }, Facts = [.. Years[0].Facts, hold] };

        HeadDown.Longest("plank-forearm", Read([held, .. Years.Skip(1)])).Should().Be(45);
    }

    private static TrainingHistory Read(IReadOnlyList<SessionRecord> sessions)
    {
        var needed = LookBack.ForPlan([.. sessions.Select(LookBack.Card)]);
        return new TrainingHistory([.. sessions.Where(s => needed.Contains(s.Head.Id))]);
    }
}
