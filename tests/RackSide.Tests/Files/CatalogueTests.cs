using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using YamlDotNet.RepresentationModel;

namespace RackSide.Tests.Files;

public class CatalogueTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    private static IEnumerable<string> Lines(CueCard c) => [c.SetUp, c.WayDown, c.WayUp, c.Fault, c.StopIf];

    [Fact]
    public void It_knows_well_over_85_exercises() => Catalogue.All.Count.Should().BeGreaterThan(95);

    [Fact]
    public void Every_motion_can_be_done_in_at_least_three_ways() =>
        Enum.GetValues<Motion>().Should().OnlyContain(m => Catalogue.Of(m).Count() >= 3);

    [Fact]
    public void Every_cue_card_is_filled_and_fits_half_a_screen() =>
        Catalogue.All.SelectMany(e => Lines(e.Cues)).Should().OnlyContain(line => line.Length > 0 && line.Length <= 42);

    [Fact]
    public void No_two_exercises_share_a_cue_card_or_a_name()
    {
        Catalogue.All.Select(e => e.Cues).Should().OnlyHaveUniqueItems();
        Catalogue.All.Select(e => e.Name).Should().OnlyHaveUniqueItems();
        Catalogue.All.Select(e => e.ShortName).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Every_short_name_fits_a_narrow_column() =>
        Catalogue.All.Should().OnlyContain(e => e.ShortName.Length > 0 && e.ShortName.Length <= 14);

    [Fact]
    public void Every_id_is_lower_case_words_with_hyphens() =>
        Catalogue.All.Should().OnlyContain(e => e.Id.All(c => char.IsAsciiLetterLower(c) || c == '-'));

    [Fact]
    public void Easier_and_harder_are_exercises_of_the_catalogue_or_plain_words() =>
        Catalogue.All.SelectMany(e => new[] { e.Easier, e.Harder }).OfType<string>()
            .Should().OnlyContain(to => to.Contains(' ') || Catalogue.Find(to) != null);

    [Fact]
    public void Going_easier_always_ends_and_never_comes_round_again()
    {
        foreach (var exercise in Catalogue.All)
        {
            var seen = new HashSet<string>();
            for (var e = exercise; e is not null; e = e.Easier is { } id ? Catalogue.Find(id) : null)
            {
                seen.Add(e.Id).Should().BeTrue($"going easier from {exercise.Id} comes back to {e.Id}");
            }
        }
    }

    [Fact]
    public void Every_exercise_trains_something() => Catalogue.All.Should().OnlyContain(e => e.Muscles.Count > 0);

    [Fact]
    public void Equipment_is_named_in_the_words_of_the_house_rules_and_no_word_is_idle() =>
        Catalogue.All.SelectMany(e => e.Equipment).Distinct().Should().BeEquivalentTo(KitDefaults.EquipmentWords);

    [Fact]
    public void Safety_bars_belong_under_every_barbell_squat_and_bench_press()
    {
        var under = Catalogue.All.Where(e => e.LoadType == LoadType.Barbell)
            .Where(e => e.Motion == Motion.Squat || e.Id.Contains("bench", StringComparison.Ordinal));

        under.Should().HaveCountGreaterThan(6).And.OnlyContain(e => e.NeedsSafetyBars);
    }

    [Fact]
    public void A_press_on_the_bench_with_a_bar_is_not_done_without_safety_bars() =>
        Catalogue.All.Where(e => e.LoadType == LoadType.Barbell && e.Id.Contains("bench", StringComparison.Ordinal))
            .Should().OnlyContain(e => e.Cues.StopIf.Contains("safety bars", StringComparison.Ordinal));

    [Fact]
    public void Every_band_is_checked_for_nicks_or_for_slipping() =>
        Catalogue.All.Where(e => e.LoadType == LoadType.Band)
            .Should().OnlyContain(e => e.Cues.StopIf.Contains("band has a nick", StringComparison.Ordinal));

    [Fact]
    public void Upside_down_stops_at_pressure_in_the_head() =>
        Catalogue.All.Where(e => e.Inverted)
            .Should().HaveCountGreaterThan(2).And.OnlyContain(e => e.Cues.StopIf.Contains("head pressure", StringComparison.Ordinal));

    [Fact]
    public void It_agrees_with_the_reference_list_on_motion_and_on_how_a_set_is_told()
    {
        using var text = new StreamReader(Path.Combine(AppContext.BaseDirectory, "Reference", "exercises.yaml"));
        var stream = new YamlStream();
        stream.Load(text);
        var listed = ((YamlSequenceNode)stream.Documents[0].RootNode).Cast<YamlMappingNode>().ToList();

        listed.Should().HaveCount(85);
        foreach (var entry in listed)
        {
            var exercise = Catalogue[Word(entry, "id")];
            exercise.Motion.ToString().Should().BeEquivalentTo(Word(entry, "pattern").Replace("_", ""), exercise.Id);
            exercise.Held.Should().Be(Word(entry, "hold") == "true", exercise.Id);
            exercise.Inverted.Should().Be(Word(entry, "inv") == "true", exercise.Id);
            exercise.OneSided.Should().Be(Word(entry, "uni") == "true", exercise.Id);
        }
    }

    private static string Word(YamlMappingNode entry, string name) =>
        entry.Children.TryGetValue(name, out var node) ? ((YamlScalarNode)node).Value! : "";

    [Fact]
    public void No_name_or_cue_carries_a_capital_or_a_sign_that_would_make_it_a_makers_name()
    {
        string[] places = ["Romanian", "Achilles"];
        var words = Catalogue.All
            .SelectMany(e => Lines(e.Cues).Append(e.ShortName).Append(char.ToLowerInvariant(e.Name[0]) + e.Name[1..]))
            .SelectMany(line => line.Split(' '));

        words.Except(places).Should().OnlyContain(w => !w.Any(c => char.IsUpper(c) || c > 127));
    }

    [Fact]
    public void A_faulty_entry_is_told_and_not_skipped()
    {
        var reading = CatalogueFile.Read("- id: nod\n  name: Nod\n  motion: squatting\n", "more.yaml");

        reading.Value.Should().BeNull();
        reading.Mistakes.Select(m => m.Field).Should().BeEquivalentTo("short", "motion", "load", "equipment", "muscles", "cues");
    }
}
