using RackSide.Training.Skills;

namespace RackSide.Tests.Skills;

/// <summary>ladder-table.md, a row a test: what was done in, rung, targets and why-line out.</summary>
public class LadderTableTests
{
    private static readonly string Table = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Skills", "ladder-table.md"));

    public static TheoryData<int, string> Rows
    {
        get
        {
            TheoryData<int, string> rows = [];
            foreach (var (line, cells) in LadderTable.Rows(Table))
            {
                rows.Add(line, $"{cells["ladder"]}: {cells["done"]}");
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_coach_would_go_on_to_this(int line, string about)
    {
        var row = LadderTable.Rows(Table).Single(r => r.Line == line).Cells;

        var asked = LadderTable.Ask(row);

        string.Join(" | ", LadderTable.Words(asked), asked.Why.Code, asked.Why.Line, asked.Why.Advice ?? "")
            .Should().Be(string.Join(" | ", row["asked for"], row["code"], row["why-line"], row["advice"]), about);
        asked.Why.Line.Length.Should().BeLessThanOrEqualTo(76, "a why-line fits beside its word");
    }

    [Fact]
    public void The_table_tries_every_reason_of_a_ladder() => LadderTable.Rows(Table).Select(r => r.Cells["code"]).Should().Contain(
        typeof(SkillReasons).GetFields().Select(f => (string)f.GetRawConstantValue()!).Except([SkillReasons.Play]), "play has tests of its own");
}
