using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Skills;

namespace RackSide.Tests.Skills;

/// <summary>Variants of the same motion for variety: drawn by a seed from outside, and without a mark on any ladder.</summary>
public class PlayTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    private static readonly TrainingDay Skills = PlanFile.Default(Catalogue).Day("skills-day")!;

    private static readonly Lifter Ottoline = new("ottoline", "Ottoline Marsh", MassUnit.Kilogram, Instant.MinValue);

    [Fact]
    public void The_same_seed_draws_the_same_and_others_draw_everything_in_time()
    {
        var variants = Catalogue.Of(Motion.HorizontalPush).ToList();

        Play.Shuffled(variants, 7, "push").Should().Equal(Play.Shuffled(variants, 7, "push")).And.BeEquivalentTo(variants);
        Enumerable.Range(0, 200).Select(seed => Play.Shuffled(variants, seed, "push")[0]).Distinct().Should().HaveCount(variants.Count);
    }

    [Fact]
    public void Every_part_stays_counted_as_it_was_and_nothing_harder_or_head_down_is_drawn()
    {
        var usual = Asked(null);
        foreach (var asked in Enumerable.Range(0, 60).Select(seed => Asked(seed)))
        {
            asked.Select(p => p.Slot).Should().Equal(usual.Select(p => p.Slot));
            foreach (var (drawn, was) in asked.Zip(usual))
            {
                Catalogue[drawn.Exercise].Held.Should().Be(Catalogue[was.Exercise].Held || drawn.Scheme is Scheme.Tick or Scheme.Accumulate && Catalogue[drawn.Exercise].Held);
                Catalogue[drawn.Exercise].Inverted.Should().BeFalse();
                (drawn.Exercise == was.Exercise || drawn.Why.Code == SkillReasons.Play).Should().BeTrue();
                var ladder = Skills.Slots.Single(s => s.Key == drawn.Slot).Ladder;
                (ladder is null || ladder.Number(ladder.RungOf(drawn.Exercise)!) <= ladder.Number(ladder.RungOf(was.Exercise)!)).Should().BeTrue();
            }
        }

        Enumerable.Range(0, 60).SelectMany(seed => Asked(seed)).Count(p => p.Why.Code == SkillReasons.Play).Should().BeGreaterThan(60);
    }

    private static IReadOnlyList<Prescription> Asked(int? play) => Planner.Prescriptions(
        Skills, Catalogue, KitDefaults.For(MassUnit.Kilogram), Ottoline, TrainingHistory.Empty, new LocalDate(2026, 11, 25), play);
}
