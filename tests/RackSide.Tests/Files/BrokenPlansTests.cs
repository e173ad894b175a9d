using System.Runtime.CompilerServices;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Files;

/// <summary>
/// Plans with mistakes that people make, in the folder BrokenPlans, and beside each all that <c>rackside plan check</c> says of
/// it. With <c>RACKSIDE_ACCEPT=1</c> in the environment what it says is written anew; read it before committing.
/// </summary>
public class BrokenPlansTests
{
    private const string Clock = "2026-11-25T18:00";

    private static readonly bool Accept = Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1";

    public static TheoryData<string> Plans => [.. Directory.EnumerateFiles(Folder(), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Plans))]
    public void All_that_is_wrong_with_a_plan_is_told_at_once(string name)
    {
        using var home = new PassingFolder();
        var (plan, expected) = (Path.Combine(Folder(), name + ".yaml"), Path.Combine(Folder(), name + ".txt"));

        var ran = CommandLine.At(home.Path, Clock).RunWords("plan", "check", plan);

        var said = ran.Error.ReplaceLineEndings("\n").Replace(plan, name + ".yaml", StringComparison.Ordinal);
        if (Accept)
        {
            File.WriteAllText(expected, said);
        }

        (ran.Code, ran.Out).Should().Be((65, ""));
        said.Should().Be(File.ReadAllText(expected), $"{name}.txt is what the program says of {name}.yaml; where the change is meant, run with RACKSIDE_ACCEPT=1");
        home.Entries.Should().BeEmpty("a command that only reads makes nothing on disk");
    }

    [Fact]
    public void There_are_sixty_of_them_or_more() => Plans.Should().HaveCountGreaterThanOrEqualTo(60);

    [Fact]
    public void A_file_far_too_large_is_not_read()
    {
        using var home = new PassingFolder();
        var plan = home.File("plan.yaml", $"name: {new string('x', 10_000_000)}\n");

        var ran = CommandLine.At(home.Path, Clock).RunWords("plan", "check", plan);

        (ran.Code, ran.Out, ran.Error.TrimEnd()).Should().Be((65, "", $"{plan}: is larger than 1 MB; name a plan or house-rules file"));
    }

    private static string Folder([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "BrokenPlans");
}
