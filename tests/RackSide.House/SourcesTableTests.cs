using System.Reflection;
using RackSide.Files;
using RackSide.Training.Progression;
using RackSide.Training.Skills;
using RackSide.Training.Strength;

namespace RackSide.House;

public class SourcesTableTests
{
    private const string Document = "docs/sources.md";

    /// <summary>
    /// The files of Progression, Strength, Skills and Loading that hold no rule of their own, and what they hold instead. A new
    /// file there needs a row in sources.yaml, or a good reason here.
    /// </summary>
    private static readonly IReadOnlyDictionary<string, string> WithoutRule = new Dictionary<string, string>
    {
        ["Decision.cs"] = "what a rule gives",
        ["Footing.cs"] = "what the rules look at",
        ["Inputs.cs"] = "the numbers a reason rests on",
        ["LoadText.cs"] = "words",
        ["Meanwhile.cs"] = "what happened besides, as the rules look at it",
        ["Reasons.cs"] = "the codes",
        ["SkillReasons.cs"] = "the codes of ladders",
        ["RungSlots.cs"] = "a rung written out as a slot",
        ["Reps.cs"] = "targets written out by set",
        ["AsFewPlates.cs"] = "the other stack that a tie is told against",
        ["BarUser.cs"] = "one of two lifters as a value",
        ["ExactJob.cs"] = "a job in whole numbers",
        ["ExactUnit.cs"] = "arithmetic without rounding",
        ["LoadBand.cs"] = "the loads that will do, as a value",
        ["PlanCost.cs"] = "what a plan costs, as a value",
        ["PlatePlan.cs"] = "what the plate rule gives",
        ["TurnRows.cs"] = "the plate rule's search for many orders at once",
        ["TurnSearch.cs"] = "the search of the rule of turns",
        ["UsefulStates.cs"] = "the states of that search",
        ["SleeveStates.cs"] = "the search of the plate rule, numbered",
        ["SearchText.cs"] = "words",
        ["BarSet.cs"] = "a set to be loaded, as a value",
        ["HandleLoading.cs"] = "the loading rule on short handles",
        ["PinAndAddOns.cs"] = "sums of a stack's positions and what is laid on",
        ["BarStack.cs"] = "the plates on one side as a value",
        ["BarTable.cs"] = "the search of the loading rule, kept",
        ["KitLoads.cs"] = "one answer an exercise, kept",
        ["LoadWords.cs"] = "words",
        ["Loadable.cs"] = "what the loading rule gives",
        ["MissingPair.cs"] = "what the loading rule gives where it cannot",
        ["PlateChange.cs"] = "the difference of two stacks",
        ["RampSet.cs"] = "what a ramp is made of",
        ["ReachableLoads.cs"] = "the loads of a kit in order",
        ["SideStacks.cs"] = "the search of the loading rule",
    };

    private static readonly SourcesTable Table = new(
        SourcesTable.TestsIn([new Source("t.cs", "public class Given { [Fact] public void There_is_one() { } }")]),
        ["src/RackSide.Training/Measures/Mass.cs", "src/RackSide.Training/Progression/StepUp.cs"],
        ["all-met"],
        ["RepFormula.Epley"]);

    private static readonly RuleSource Good = new("a", ["all-met"], ["Mass.cs", "StepUp.cs", "RepFormula.Epley"], "b", "practice", ["Given.There_is_one"]);

    [Fact]
    public void Every_rule_has_a_source_a_status_and_a_test_that_exists()
    {
        var table = new SourcesTable(
            SourcesTable.TestsIn(Repository.Sources("tests")), Repository.Files, Codes(), [.. Members<RepFormula>(), .. Members<RepTable>()]);

        string.Join('\n', table.Violations(SourcesFile.Read(), WithoutRule)).Should().BeEmpty();
    }

    [Fact]
    public void The_document_is_what_the_data_file_says()
    {
        var written = SourcesMarkdown.Of(SourcesFile.Read());
        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(Path.Combine(Repository.Root, Document), written);
        }

        Repository.Read(Document).Should().Be(written, $"{Document} is made from src/RackSide/Data/sources.yaml; run with RACKSIDE_ACCEPT=1");
    }

    [Fact]
    public void A_row_becomes_a_line_with_its_codes_first() =>
        SourcesMarkdown.Of(new RuleSources([new RuleGroup("Title", "Before.", [Good], "After.")])).Should().EndWith("""
            ## Title
            Before.

            | rule or formula | where | source | status | test |
            |---|---|---|---|---|
            | `all-met`: a | `Mass.cs`, `StepUp.cs`, `RepFormula.Epley` | b | practice | `Given.There_is_one` |

            After.

            """.ReplaceLineEndings("\n"));

    [Fact]
    public void A_table_that_is_so_passes() => Check(Good).Should().BeEmpty();

    public static TheoryData<RuleSource, string> Faulty => new()
    {
        { Good with { Tests = [] }, "a: names no test" },
        { Good with { Tests = ["There_is_none"] }, "a: there is no test 'There_is_none'" },
        { Good with { Tests = ["Other.There_is_one"] }, "a: there is no test 'Other.There_is_one'" },
        { Good with { Where = [.. Good.Where, "Gone.cs"] }, "a: there is no file or formula 'Gone.cs'" },
        { Good with { Where = ["Mass.cs", "RepFormula.Epley"] }, "StepUp.cs: has no row" },
        { Good with { Where = ["StepUp.cs"] }, "RepFormula.Epley: the formula has no row" },
        { Good with { Status = "surely" }, "a: 'surely' is no status" },
        { Good with { Codes = [] }, "all-met: the reason code has no row" },
        { Good with { Codes = ["all-met", "gone"] }, "gone: no prescription gives this reason code" },
        { Good with { Codes = ["all-met", "all-met"] }, "all-met: the reason code has two rows" },
    };

    [Theory]
    [MemberData(nameof(Faulty))]
    public void A_row_that_is_not_so_is_found(RuleSource row, string told) => Check(row).Should().Equal(told);

    [Fact]
    public void A_file_said_to_hold_no_rule_must_be_there_and_have_no_row()
    {
        Check(Good, "StepUp.cs").Should().Equal("StepUp.cs: has a row, and is said to hold no rule");
        Check(Good, "Gone.cs").Should().Equal("Gone.cs: is said to hold no rule, but there is no such file");
        Check(Good with { Where = ["RepFormula.Epley"] }, "StepUp.cs").Should().BeEmpty();
    }

    private static IEnumerable<string> Check(RuleSource row, params string[] withoutRule) =>
        Table.Violations(new RuleSources([new RuleGroup("", null, [row], null)]), withoutRule.ToDictionary(f => f, _ => "nothing"));

    private static IReadOnlyList<string> Codes() =>
        [.. new[] { typeof(Reasons), typeof(SkillReasons) }.SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static)).Where(f => f.IsLiteral).Select(f => (string)f.GetRawConstantValue()!)];

    private static IEnumerable<string> Members<T>()
        where T : struct, Enum => Enum.GetNames<T>().Select(name => $"{typeof(T).Name}.{name}");
}
