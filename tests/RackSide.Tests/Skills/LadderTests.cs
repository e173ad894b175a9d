using RackSide.Files;
using RackSide.Training.Exercises;

namespace RackSide.Tests.Skills;

/// <summary>The ladders that come with the program, and the sentences a faulty file gets.</summary>
public class LadderTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    [Fact]
    public void There_is_one_for_legs_pulling_pushing_the_wall_and_the_planks() => Catalogue.Ladders.Select(l => l.Key)
        .Should().Equal("single-leg-squat", "hang-to-pull-up", "push-up", "wall-handstand", "plank");

    [Fact]
    public void Every_rung_says_what_clean_means_and_what_can_hurt() => Catalogue.Ladders.SelectMany(l => l.Rungs)
        .Should().OnlyContain(r => r.Clean.Length > 0 && r.Clean.Length <= 72 && r.Caution.Length > 0 && r.Caution.Length <= 72);

    [Fact]
    public void The_next_rung_is_never_entered_outside_its_range()
    {
        foreach (var (before, rung) in Catalogue.Ladders.SelectMany(l => l.Rungs.Zip(l.Rungs.Skip(1))))
        {
            (rung.Low < rung.High).Should().BeTrue(rung.Exercise);
            (rung.BeginAt ?? rung.Low).Should().BeInRange(rung.Low, rung.High, rung.Exercise);
            Catalogue[before.Exercise].Should().NotBeNull();
        }
    }

    [Fact]
    public void Every_rung_is_harder_than_the_one_before_it_where_the_catalogue_says_so()
    {
        foreach (var (before, rung) in Catalogue.Ladders.SelectMany(l => l.Rungs.Zip(l.Rungs.Skip(1))))
        {
            Catalogue[before.Exercise].Easier.Should().NotBe(rung.Exercise, $"{rung.Exercise} stands above {before.Exercise}");
        }
    }

    [Fact]
    public void Head_down_rungs_need_a_hold_that_stands_on_the_same_ladder() => Catalogue.Ladders
        .SelectMany(l => l.Rungs.Select(r => (Ladder: l, Exercise: Catalogue[r.Exercise])))
        .Where(r => r.Exercise.Inverted)
        .Should().HaveCount(2).And.OnlyContain(r => r.Exercise.Needs != null && r.Ladder.RungOf(r.Exercise.Needs.Exercise)!.High >= r.Exercise.Needs.Seconds);

    [Theory]
    [InlineData("exercise: air-squat", "exercise: air-sqat", "5: exercise: the catalogue has no exercise \"air-sqat\"; did you mean air-squat?")]
    [InlineData("reps: 10-20", "reps: 20", "5: a rung needs room to climb; write a range from fewer to more")]
    [InlineData("clean: hips low", "clean:", "8: clean: nothing is written here; write what a clean rep or hold looks like")]
    public void A_faulty_line_is_told_in_one_sentence(string good, string bad, string told)
    {
        const string text = """
            - key: legs
              name: Legs
              goal: strong legs
              rungs:
                - exercise: air-squat
                  sets: 2
                  reps: 10-20
                  clean: hips low
            """;

        LadderFile.Read(text, "ladders.yaml", Catalogue).Mistakes.Should().BeEmpty();
        LadderFile.Read(text.Replace(good, bad, StringComparison.Ordinal), "ladders.yaml", Catalogue).Mistakes
            .Select(m => m.ToString()).Should().Equal($"ladders.yaml:{told}");
    }
}
