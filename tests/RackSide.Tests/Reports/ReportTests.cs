using System.Xml.Linq;
using NodaTime;
using RackSide.Reports;
using RackSide.Tests.Commands;
using RackSide.Training.Schedule;

namespace RackSide.Tests.Reports;

/// <summary>Reports of the invented gym: well-formed, still, and told in words too.</summary>
[Collection(nameof(Tollbooth))]
public sealed class ReportTests(Tollbooth gym) : IDisposable
{
    private readonly PassingFolder folder = new();

    public void Dispose() => folder.Dispose();

    // Standard S25 of docs/screen.md.
    [Fact]
    public void A_week_says_what_was_done_and_where_each_lift_stands()
    {
        var page = Written("report --week 2026-W45");

        Texts(page, "h1").Should().Equal("Ottoline Marsh: week 45, Mon 2 Nov 2026 to Sun 8 Nov 2026");
        Texts(page, "p").First().Should().StartWith("3 of 3 training days done: Mon Strength day, Wed Skills day, Fri Strength day.");
        Texts(page, "td").Take(5).Should().Equal("back squat", "20 kg", "22.5 kg", "22.5 kg", "same");
    }

    [Fact]
    public void Every_chart_is_told_in_words_with_its_first_and_last_number()
    {
        var charts = Written("report").Descendants("svg").ToList();

        charts.Should().HaveCountGreaterThan(3);
        charts.Should().OnlyContain(c => c.Element("title")!.Value == c.Attribute("aria-label")!.Value && c.Attribute("role")!.Value == "img");
        charts[0].Element("title")!.Value.Should().MatchRegex("^back squat: 20 kg on 2026-11-02, .* kg on 2026-11-09, 3 entries$");
        charts[0].Descendants("circle").Should().HaveCount(3);
    }

    [Theory]
    [InlineData("report")]
    [InlineData("report --month 2026-11")]
    [InlineData("report --paper")]
    public void A_page_fetches_nothing_and_runs_nothing(string line)
    {
        var page = Written(line);

        page.Descendants().Select(e => e.Name.LocalName).Should().NotContain(["script", "link", "iframe", "img", "object"]);
        page.Descendants().Attributes().Should().OnlyContain(a => !a.Name.LocalName.StartsWith("on") && !a.Value.Contains("://"));
        page.Descendants("style").Single().Value.Should().Contain("size: A4").And.NotContain("url(");
    }

    /// <summary>An element that closes itself would be read as an opening one (HTML Standard, 13.2.5: the solidus is ignored).</summary>
    [Fact]
    public void No_element_closes_itself_but_those_that_hold_nothing()
    {
        Written("report --paper");

        System.Text.RegularExpressions.Regex.Matches(Read(), "<(\\w+)[^>]*/>").Select(m => m.Groups[1].Value).Distinct().Should().BeSubsetOf(["meta", "br"]);
    }

    [Fact]
    public void A_name_is_a_name_and_no_mark_up()
    {
        using var copy = gym.Copy();
        using (var logbook = RackSide.Logbook.LiteLogbook.Open(copy.Path, Instant.FromUtc(2026, 11, 11, 18, 0)))
        {
            logbook.Keep(logbook.Lifters()[0] with { Name = "<b>Otto & line</b>" });
        }

        CommandLine.In(copy.Path, "2026-11-11T18:00").RunWords("report", "--out", Path).Code.Should().Be(0);

        Texts(Parsed(), "h1").Single().Should().StartWith("<b>Otto & line</b>: week 46");
    }

    [Fact]
    public void The_sheet_has_a_box_for_every_set_and_the_plates_of_each_side()
    {
        var rows = Written("report --paper", day: 13).Descendants("tbody").Single().Elements("tr").ToList();

        var squat = rows[0].Elements("td").ToList();
        squat[0].Value.Should().StartWith("Barbell back squat");
        squat[3].Elements("span").Should().HaveCount(5);
        squat[2].Value.Should().Contain("25 kg").And.Contain("each side: 2.5");
    }

    /// <summary>ISO 8601 gives a week to the year of its Thursday; a month is dealt with likewise (ours). 2026 has 53 weeks.</summary>
    [Theory]
    [InlineData(2026, 12, 49, 53)]
    [InlineData(2027, 1, 1, 4)]
    [InlineData(2026, 10, 40, 44)]
    public void A_week_belongs_to_the_month_of_its_Thursday(int year, int month, int first, int last)
    {
        var weeks = MonthReport.WeeksOf(new YearMonth(year, month)).ToList();

        (weeks[0].Number, weeks[^1].Number).Should().Be((first, last));
    }

    [Theory]
    [InlineData("report", "report needs a file to write; add --out week.html")]
    [InlineData("report --out x --month 2026-13", "--month: \"2026-13\" is not a month; write one such as 2026-11")]
    [InlineData("report --out x --month 2027-11", "--month: 2027-11 has not begun yet")]
    [InlineData("report --out x --paper --week 2026-W45", "--week, --month and --paper are three different pages; ask for one of them")]
    public void A_slip_gets_one_sentence(string line, string sentence)
    {
        var ran = gym.On(11).Run(line);

        (ran.Code, string.Join(' ', ran.ErrorLines)).Should().Be((64, $"rackside: {sentence}"));
    }

    [Fact]
    public void A_file_that_cannot_be_written_is_told() =>
        gym.On(11).Run("report --out /no/such/folder/week.html").Should().Match<Ran>(r => r.Code == 73 && r.Error.StartsWith("rackside: --out: /no/such/folder/week.html cannot be written"));

    private string Path => System.IO.Path.Combine(folder.Path, "page.html");

    private string Read() => File.ReadAllText(Path);

    private XElement Parsed() => XDocument.Parse(Read()["<!DOCTYPE html>".Length..]).Root!;

    private XElement Written(string line, int day = 11)
    {
        gym.On(day).RunWords([.. line.Split(' '), "--out", Path]).Code.Should().Be(0);
        return Parsed();
    }

    private static IEnumerable<string> Texts(XElement page, string element) => page.Descendants(element).Select(e => e.Value);
}
