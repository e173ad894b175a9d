using System.Globalization;
using NodaTime;
using NodaTime.Text;
using RackSide.EndToEnd.Driving;
using RackSide.Logbook;
using RackSide.Training.Measures;

namespace RackSide.EndToEnd.Sessions;

/// <summary>
/// A month of check-ins on the real program: the first and the last at the screen, from the numeric pad, the others by the
/// command every fourth morning. One lifter weighs in kilograms, one in pounds; both type a decimal comma.
/// </summary>
public sealed class CheckInTests
{
    private const int Slow = 1;
    private static readonly LocalDate First = new(2026, 11, 3);
    private static readonly LocalDate Last = new(2026, 12, 1);

    [Theory]
    [InlineData(MassUnit.Kilogram, 80.0, 0.042, "178", "178 cm", 50, 15)]
    [InlineData(MassUnit.Pound, 176.4, 0.093, "5.10", "5 ft 10 in", 80, 24)]
    public async Task A_month_of_check_ins_ends_with_a_trend_and_a_verdict(MassUnit unit, double began, double aDay, string tall, string height, int columns, int rows)
    {
        using var gym = new GymFolder();
        await FirstMorning(gym, unit, Typed(began), columns, rows);
        for (var day = 4; day < 28; day += 4)
        {
            Weigh(gym, First.PlusDays(day), Typed(began + (aDay * day) + (0.1 * (day % 3))));
        }

        using var lifter = ScriptedLifter.WalkUp(gym, $"{Iso(Last)}T07:00", Slow, columns, rows);
        await lifter.Sees("REST DAY");
        await CheckIn(lifter, unit, Typed(10 * began), Typed(began + (aDay * 28)));
        lifter.Press("KP6", "KP1");
        await lifter.Sees("your numbers");
        lifter.Press("KP2", "KP1");
        await lifter.Sees("How tall are you?");
        Type(lifter, tall);
        lifter.Press("KPEnter");
        await lifter.Sees(height);
        lifter.Press("KP2");
        await lifter.Sees("Which year were you born in?");
        Type(lifter, "1988");
        lifter.Press("KPEnter");
        await lifter.Sees("37");
        lifter.Press("KP3", "KP8");
        var page = await lifter.Sees("weekly means");
        for (var i = 0; i < 12; i++)
        {
            lifter.Press("KP-");
        }

        page += await lifter.Sees("kcal");
        page.Should().Contain("a week, give or take").And.Contain("stay as you are").And.Contain(unit.Symbol());
        lifter.Press("KPEnter");
        await lifter.Sees("REST DAY");
        lifter.Press("KP7");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);

        using var logbook = LiteLogbook.Open(gym.Path, Instant.FromUtc(2026, 12, 31, 0, 0));
        var weighIns = logbook.WeighIns(logbook.Lifters()[0].Key);
        weighIns.Select(w => w.Date).Should().Equal(Enumerable.Range(0, 8).Select(i => First.PlusDays(4 * i)));
        weighIns.Should().OnlyContain(w => w.Weight.Unit == unit);
        weighIns[0].Weight.Amount.Should().Be((decimal)began);
    }

    private static async Task FirstMorning(GymFolder gym, MassUnit unit, string weight, int columns, int rows)
    {
        using var lifter = ScriptedLifter.WalkUp(gym, $"{Iso(First)}T07:00", Slow, columns, rows);
        for (var page = 1; page <= 9; page++)
        {
            await lifter.Sees($"page {page} of 9");
            lifter.Press(page == 3 && unit == MassUnit.Pound ? ["KP2", "KPEnter"] : ["KPEnter"]);
        }

        await lifter.Sees("REST DAY");
        await CheckIn(lifter, unit, weight);
        lifter.Press("KP7");
        (await lifter.Screen.WaitForEnd()).Should().Be(0);
    }

    // The one that is hardly a weight is refused, and mended.
    private static async Task CheckIn(ScriptedLifter lifter, MassUnit unit, params string[] weights)
    {
        lifter.Press("KP2");
        await lifter.Sees("Body weight this morning?");
        foreach (var weight in weights)
        {
            Type(lifter, weight);
            await lifter.Sees($"[{weight}");
            lifter.Press("KPEnter");
            if (weight != weights[^1])
            {
                await lifter.Sees($"Type a body weight, {(unit == MassUnit.Kilogram ? "20 to 350 kg" : "45 to 771 lb")}");
                lifter.Press([.. weight.Select(_ => "BSpace")]);
            }
        }

        await lifter.Sees("Slept last night, about?");
        Type(lifter, "7.5");
        await lifter.Sees("[7.5");
        foreach (var next in (string[])["Eaten yesterday", "Drunk yesterday", "How sore"])
        {
            lifter.Press("KPEnter");
            await lifter.Sees(next);
        }

        lifter.Press("KP1");
        await lifter.Sees("check-in written");
    }

    private static void Weigh(GymFolder gym, LocalDate on, string weight)
    {
        var said = Tool.Run("env", [$"RACKSIDE_CLOCK={Iso(on)}T07:00", "TZ=Europe/London", "LC_ALL=de_DE.UTF-8", .. ProgramUnderTest.RackSide, "weigh", weight, "--data", gym.Path]);
        said.Should().StartWith($"written: {decimal.Parse(weight.Replace(',', '.'), CultureInfo.InvariantCulture):0.#} ");
    }

    private static string Typed(double weight) => weight.ToString("0.0", CultureInfo.InvariantCulture).Replace('.', ',');

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);

    // The pad's mark is a point or a comma, as the layout has it.
    private static void Type(ScriptedLifter lifter, string text) => lifter.Press([.. text.Select(c => c == ',' ? "," : $"KP{c}")]);
}
