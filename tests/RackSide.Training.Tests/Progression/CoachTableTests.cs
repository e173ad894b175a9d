using RackSide.Training.Progression;

namespace RackSide.Training.Tests.Progression;

/// <summary>coach-table.md, a row a test: history in, prescription and why-line out.</summary>
public class CoachTableTests
{
    private static readonly string Table = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Progression", "coach-table.md"));

    public static TheoryData<int, string> Rows
    {
        get
        {
            TheoryData<int, string> rows = [];
            foreach (var (line, cells) in CoachTable.Rows(Table))
            {
                rows.Add(line, $"{cells["lift"]} {cells["plan"]}: {cells["done"]}");
            }

            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_coach_would_ask_for_this(int line, string about)
    {
        var row = CoachTable.Rows(Table).Single(r => r.Line == line).Cells;

        var asked = CoachTable.Ask(row);

        (CoachTable.Words(asked), asked.Why.Code, asked.Why.Line, asked.Why.Advice ?? "")
            .Should().Be((row["asked for"], row["code"], row["why-line"], row["advice"]), about);
        asked.Why.Line.Length.Should().BeLessThanOrEqualTo(76, "a why-line fits beside its word");
    }

    [Fact]
    public void The_table_has_sixty_rows_or_more() => CoachTable.Rows(Table).Count().Should().BeGreaterThanOrEqualTo(60);

    [Fact]
    public void The_table_tries_every_reason() => CoachTable.Rows(Table).Select(r => r.Cells["code"]).Distinct().Should().BeEquivalentTo(
        typeof(Reasons).GetFields().Select(f => (string)f.GetRawConstantValue()!).Except([Reasons.FirstLoadFound]),
        "what a search finds it finds in the session: LoadSearchTests");
}
