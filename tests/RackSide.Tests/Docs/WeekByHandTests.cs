using System.Globalization;
using System.Text.Json;
using NodaTime;
using NodaTime.Testing;
using RackSide.Pages;
using RackSide.Pages.Rack;
using RackSide.Places;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Docs;

/// <summary>The page of a week against docs/week-by-hand.md, which was reckoned on paper from the sets that stand in it.</summary>
public sealed class WeekByHandTests(HandWeek week) : IClassFixture<HandWeek>
{
    private const string Sunday = "2026-11-15T20:00";

    private static readonly HandPaper Paper = HandPaper.Read();

    [Fact]
    public void Each_day_the_plan_asked_for_what_the_paper_says() => week.Otherwise.Should().BeEmpty();

    [Fact]
    public void The_page_says_what_the_paper_says_line_by_line() => Ran("summary").Lines.Should().Equal(Paper.Block("3.1 In lines"));

    [Theory]
    [InlineData(80, 24, "3.2 On the screen, 80x24")]
    [InlineData(50, 15, "3.3 On the screen, 50x15")]
    public void The_screen_shows_what_the_paper_says(int columns, int rows, string drawn)
    {
        using var gym = Gym.Open(new Folders(week.Folder, week.Folder, "here"), null, new FakeClock(Instant.FromUtc(2026, 11, 15, 20, 0)), looks: true);
        var screen = new WeekConversation(gym.WeekUntil(gym.Lifter()!, new LocalDate(2026, 11, 15)));

        screen.Draw(new PageSize(columns, rows), gym.Clock.GetCurrentInstant()).Text.TrimEnd('\n').Split('\n').Should().Equal(Paper.Block(drawn));
    }

    [Fact]
    public void Every_number_of_the_page_is_that_of_the_paper()
    {
        using var json = JsonDocument.Parse(Ran("summary --json").Out);

        foreach (var (name, number) in Paper.Results)
        {
            Found(json.RootElement, name).Should().Be(number, "{0} is reckoned so on paper", name);
        }

        Paper.Results.Should().HaveCountGreaterThan(30, "every number of the page is on the paper");
    }

    private Ran Ran(string line) => CommandLine.In(week.Folder, Sunday).With("TZ", "Etc/UTC").Run(line);

    /// <summary>A value by its path of names: <c>lifts.squat.now</c>, <c>totals.push-up.done</c>, <c>conclusions.1</c>.</summary>
    private static string Found(JsonElement at, string path)
    {
        foreach (var step in path.Split('.'))
        {
            at = at.ValueKind == JsonValueKind.Array ? Entry(at, step) : at.GetProperty(step);
        }

        return at.ValueKind switch
        {
            JsonValueKind.Array => at.GetArrayLength().ToString(CultureInfo.InvariantCulture),
            JsonValueKind.Object => $"{Number(at.GetProperty("amount"))} {at.GetProperty("unit").GetString()}",
            JsonValueKind.Number => Number(at),
            _ => at.ToString(),
        };
    }

    private static JsonElement Entry(JsonElement list, string step) => int.TryParse(step, CultureInfo.InvariantCulture, out var number)
        ? list[number - 1]
        : list.EnumerateArray().Single(e => new[] { "slot", "name", "muscle" }.Any(n => e.TryGetProperty(n, out var v) && v.GetString() == step));

    private static string Number(JsonElement number) => number.GetDecimal().ToString("0.###", CultureInfo.InvariantCulture);
}
