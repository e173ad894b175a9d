using System.Globalization;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Loading;

/// <summary>
/// Loading/Reference/plate_ramps.csv: 120 random gyms and ramps with the best costs there are, proven by CP-SAT (Google
/// OR-Tools 9.15.6755, a model position by position) and equal to a separate dynamic programme; see the README beside it.
/// </summary>
public class ReferencePlansTests
{
    private static readonly string[] Rows =
        File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Loading", "Reference", "plate_ramps.csv"))[1..];

    public static TheoryData<string> Given { get; } = [.. Rows];

    [Fact]
    public void All_rows_are_read_and_both_orders_of_plates_are_among_them()
    {
        Rows.Should().HaveCount(120);
        Rows.Count(r => Job(r.Split(',')).HeaviestInside).Should().BeInRange(40, 80);
    }

    [Theory]
    [MemberData(nameof(Given))]
    public void A_plan_costs_what_the_integer_programme_proved_to_be_the_least(string row)
    {
        var cells = row.Split(',');

        var plan = FewestPlates.For(Job(cells))!;

        (plan.Handled, plan.PlatesOn, plan.DeviationKilograms)
            .Should().Be((Number(cells[9]), Number(cells[10]), Number(cells[11]) / 1000m));
        PlanChecks.Hold(Job(cells), plan);
    }

    private static PlateJob Job(string[] cells) => new()
    {
        Bar = Grams(cells[1]),
        Plates = [.. cells[2].Split(' ').Zip(cells[3].Split(' '), (g, n) => new PlatePairs(Grams(g), Number(n)))],
        Room = Number(cells[4]),
        HeaviestInside = cells[5] == "1",
        Sets = [.. cells[6].Split(' ').Zip(cells[7].Split(' '), cells[8].Split(' '))
            .Select(s => new LoadBand(Grams(s.First), Grams(s.Second), Grams(s.Third)))],
    };

    private static Mass Grams(string text) => Mass.Kg(Number(text) / 1000m);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
