using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;
using RackSide.Training.Skills;

namespace RackSide.Tests.Skills;

/// <summary>Who is offered work with the head below the heart.</summary>
public class HeadDownTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    private static readonly Exercise Wall = Catalogue["wall-plank-walk"];

    private static readonly Lifter Juno = new("juno", "Juno Petrov", MassUnit.Kilogram, Instant.MinValue);

    [Fact]
    public void Whoever_told_something_against_it_is_offered_no_head_down_work()
    {
        var careful = Juno with { AvoidInverted = true };

        Catalogue.All.Where(e => e.Inverted).Should().NotBeEmpty()
            .And.OnlyContain(e => !HeadDown.IsOpen(e, careful, Held("plank-high", 60, "wall-plank-walk", 60)));
    }

    [Theory]
    [InlineData(29, false)]
    [InlineData(30, true)]
    public void Thirty_seconds_of_straight_arm_plank_open_the_wall(int seconds, bool open) =>
        HeadDown.IsOpen(Wall, Juno, Held("plank-high", seconds)).Should().Be(open);

    [Fact]
    public void A_plank_whose_form_slipped_opens_nothing()
    {
        var held = Held("plank-high", 40).Sessions[0];
        var slipped = held with { Facts = [.. held.Facts, new FormTold(new FactId("t", 9), Instant.MinValue, held.Facts[0].Id, true)] };

        HeadDown.IsOpen(Wall, Juno, new TrainingHistory([slipped])).Should().BeFalse();
    }

    [Fact]
    public void The_latest_answer_counts_and_outweighs_the_set_up()
    {
        var floor = Answered(true);
        var cleared = Answered(true, false);

        HeadDown.IsAvoided(Juno, floor).Should().BeTrue();
        HeadDown.IsAvoided(Juno with { AvoidInverted = true }, cleared).Should().BeFalse("somebody was cleared since");
        HeadDown.IsTaught(floor).Should().BeFalse();
        HeadDown.IsTaught(cleared).Should().BeTrue();
    }

    private static TrainingHistory Answered(params bool[] floor) => new([new SessionRecord(
        Head([]), [.. floor.Select((f, i) => (Fact)new HeadDownAnswered(new FactId("t", i + 1), Instant.MinValue + Duration.FromSeconds(i), f))])]);

    private static TrainingHistory Held(params object[] holds)
    {
        var told = holds.Chunk(2).Select((h, i) => (Exercise: (string)h[0], Seconds: (int)h[1], Number: i + 1)).ToList();
        var asked = told.Select(h => new Prescription
        {
            Slot = h.Exercise,
            Motion = Motion.CoreBrace,
            Exercise = h.Exercise,
            Scheme = new Scheme.Hold(1, 10, 60),
            Targets = [30],
            Rest = Duration.Zero,
            Why = new Reason("test", "test"),
        }).ToList();
        return new([new SessionRecord(Head(asked), [.. told.Select(h => (Fact)new SetDone(
            new FactId("t", h.Number), Instant.MinValue, h.Exercise, h.Exercise, SetKind.Hold, 1, 30, h.Seconds, null))])]);
    }

    private static SessionHead Head(IReadOnlyList<Prescription> asked) => new()
    {
        Id = new FactId("t", 0),
        Begun = Instant.MinValue,
        Date = new LocalDate(2026, 11, 4),
        Zone = "Europe/London",
        Lifter = "juno",
        Plan = "Tollbooth plan",
        DayKey = "skills",
        DayName = "skills day",
        Kind = DayKind.Skills,
        Prescriptions = asked,
    };
}
