using System.Runtime.CompilerServices;
using RackSide.Files;
using RackSide.Training.Exercises;

namespace RackSide.Tests.Files;

/// <summary>docs/plan-files.md is for coaches, so its example must read and its list of exercises must be the catalogue.</summary>
public class PlanDocumentTests
{
    private static readonly string Document = File.ReadAllText(Path.Combine(Root(), "docs", "plan-files.md"));
    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    [Fact]
    public void The_example_is_a_plan_without_mistakes()
    {
        var example = Document.Split("```yaml\n")[1].Split("```")[0];

        PlanFile.Read(example, "plan-files.md", Catalogue).Mistakes.Should().BeEmpty();
    }

    [Fact]
    public void The_exercises_by_motion_are_the_catalogue_with_a_star_on_what_is_held()
    {
        var written = Document.Split('\n');
        bool IsRow(string line) => line.StartsWith("| `", StringComparison.Ordinal) && !line.Contains(':', StringComparison.Ordinal);
        string[] made =
        [
            .. written.TakeWhile(l => !IsRow(l)),
            .. Catalogue.All.GroupBy(e => e.Motion).Select(g => $"| `{YamlValues.MotionWord(g.Key)}` | {string.Join(", ", g.Select(e => $"`{e.Id}`{(e.Held ? "*" : "")}"))} |"),
            .. written.SkipWhile(l => !IsRow(l)).SkipWhile(IsRow),
        ];
        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(Path.Combine(Root(), "docs", "plan-files.md"), string.Join('\n', made));
        }

        written.Should().Equal(made, "docs/plan-files.md lists the catalogue; after a change of it run with RACKSIDE_ACCEPT=1");
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    [Fact]
    public void The_sentences_it_shows_are_the_ones_the_program_says()
    {
        var text = Document.Split("```yaml\n")[1].Split("```")[0]
            .Replace("[back-squat, goblet-squat]", "[back-sqat, goblet-squat]", StringComparison.Ordinal)
            .Replace("rest: 2 min", "rest: two minutes", StringComparison.Ordinal);

        foreach (var mistake in PlanFile.Read(text, "plan.yaml", Catalogue).Mistakes)
        {
            Document.Should().Contain(mistake.ToString()[mistake.ToString().IndexOf(' ', StringComparison.Ordinal)..]);
        }
    }
}
