namespace RackSide.Tests.Commands;

/// <summary>Days away and the calendar from the command line, each test in a copy of the Tollbooth gym.</summary>
[Collection(nameof(Tollbooth))]
public sealed class AwayAndCalendarTests(Tollbooth gym) : IDisposable
{
    private readonly PassingFolder folder = gym.Copy();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Days_away_are_told_listed_and_taken_back()
    {
        Run(11, "away 2026-11-13 2026-11-22 --for holiday").Lines.Should().Equal(
            "written: away Fri 13 Nov to Sun 22 Nov 2026, holiday",
            "away Fri 13 Nov to Sun 22 Nov 2026, holiday",
            "next: today, Skills day");
        Run(13, "today").Lines.Should().Contain("why: away until Sun 22 Nov").And.Contain("next: Mon 23 Nov, Strength day");
        Run(13, "away").Lines.Should().StartWith("away Fri 13 Nov to Sun 22 Nov 2026, holiday");
        Run(13, "away --take-back 13.11").Lines.Should().Equal(
            "taken back: away Fri 13 Nov to Sun 22 Nov 2026, holiday", "no days away", "next: today, Strength day");
    }

    [Fact]
    public void Somebody_ill_says_so_and_says_when_that_is_over()
    {
        Run(11, "away today --for illness").Lines[0].Should().Be("written: away from Wed 11 Nov 2026 on, illness");
        Run(16, "today").Lines[0].Should().Be("Mon 16 Nov 2026: away, for Ottoline Marsh");
        Run(18, "away --back").Lines.Should().Equal(
            "welcome back; ended yesterday: away from Wed 11 Nov 2026 on, illness",
            "away Wed 11 Nov to Tue 17 Nov 2026, illness",
            "next: today, Strength day");
        Run(18, "today").Lines.Should().Contain("why: back from days away: begin with strength, the skills day is dropped");
    }

    [Theory]
    [InlineData("away 31.11", "\"31.11\" is not a day of the calendar; write one such as 2026-12-20 or 20.12 (day.month)")]
    [InlineData("away soon", "\"soon\" is not a date; write one such as 2026-12-20 or 20.12 (day.month)")]
    [InlineData("away 2026-12-20 2026-12-10", "Thu 10 Dec 2026 is before Sun 20 Dec 2026; the last day away comes after the first")]
    [InlineData("away 2062-12-20", "Wed 20 Dec 2062 is more than two years from today; check the year")]
    [InlineData("away today --for fun", "--for: \"fun\" is no reason known here; write holiday, illness or other")]
    [InlineData("away --back", "--back: you are not away today; rackside away lists the days away")]
    [InlineData("away --take-back today", "--take-back: no days away begin on Wed 11 Nov 2026; rackside away lists them")]
    [InlineData("away today --back", "dates, --back and --take-back are three different things; ask for one of them")]
    [InlineData("away --bakc", "there is no option --bakc; did you mean --back?")]
    [InlineData("calendar --remind 30", "--remind is for a file; add --ics FILE")]
    [InlineData("calendar --ics x.ics --remind 30", "--remind needs the hour that training begins; add --at 18:30")]
    [InlineData("calendar --ics x.ics --at noon", "--at: \"noon\" is no hour of the day; write one such as 18:30")]
    [InlineData("calendar --ics x.ics --at 18:30 --remind soon", "--remind: \"soon\" is no number of minutes; write 0 to 1440, such as 30")]
    [InlineData("today --zone Asia/Tokio", "--zone: \"Asia/Tokio\" is no time zone; did you mean Asia/Tokyo?")]
    public void A_slip_gets_one_sentence_and_64(string line, string sentence)
    {
        var ran = Run(11, line);

        ran.ErrorLines.Should().Equal($"rackside: {sentence}");
        (ran.Code, ran.Out).Should().Be((64, ""));
    }

    [Fact]
    public void The_calendar_shows_four_weeks_with_what_is_out_of_turn()
    {
        Run(11, "away 2026-11-20 2026-11-24 --for holiday");

        Run(12, "calendar").Lines.Should().Equal(
            "from Thu 12 Nov 2026, for Ottoline Marsh",
            "week 46, 9 Nov to 15 Nov",
            "  Mon 9 Nov: Strength day, done",
            "  Thu 12 Nov: rest, Wednesday's skills day was missed, and is dropped: tomorrow",
            "  is a training day (today)",
            "  Fri 13 Nov: Strength day",
            "week 47, 16 Nov to 22 Nov",
            "  Mon 16 Nov: Strength day",
            "  Wed 18 Nov: Skills day",
            "  Fri 20 Nov: away until Tue 24 Nov",
            "week 48, 23 Nov to 29 Nov",
            "  Mon 23 Nov: away until Tue 24 Nov",
            "  Wed 25 Nov: Strength day; back from days away: begin with strength, the skills",
            "  day is dropped",
            "  Fri 27 Nov: Strength day",
            "week 49, 30 Nov to 6 Dec",
            "  Mon 30 Nov: Strength day",
            "  Wed 2 Dec: Skills day",
            "  Fri 4 Dec: Strength day");
    }

    [Theory]
    [InlineData("sunday", "8 Nov to 14 Nov")]
    [InlineData("saturday", "7 Nov to 13 Nov")]
    public void A_shown_week_begins_with_the_day_that_the_house_rules_say(string starts, string first)
    {
        var rules = Path.Combine(folder.Path, "gym.yaml");
        File.WriteAllText(rules, File.ReadAllText(rules).Replace("week_starts: monday", $"week_starts: {starts}", StringComparison.Ordinal));

        Run(12, "calendar").Lines[1].Should().Be(first);
    }

    [Theory] // 2026-11-11T18:00 in London is the 12th, 03:00, in Tokyo, and still the 11th in New York.
    [InlineData("Asia/Tokyo", "Thu 12 Nov 2026")]
    [InlineData("america/new york", "Wed 11 Nov 2026")]
    public void A_traveller_trains_on_the_date_there(string zone, string today) =>
        CommandLine.In(folder.Path, "2026-11-11T18:00").RunWords("today", "--zone", zone).Lines[0].Should().StartWith(today);

    [Fact]
    public void A_gym_with_a_time_zone_of_its_own_goes_by_that()
    {
        File.AppendAllText(Path.Combine(folder.Path, "gym.yaml"), "time_zone: Asia/Tokyo\n");

        Run(11, "today").Lines[0].Should().StartWith("Thu 12 Nov 2026");
    }

    [Fact]
    public void A_session_dated_wrong_gets_its_date_and_what_is_due_follows()
    {
        Run(11, "redate 2026-11-09 2026-11-10").Lines[0].Should().Be("Strength day of Mon 9 Nov 2026 is now of Tue 10 Nov 2026");
        Run(11, "redate").Lines[^1].Should().EndWith("Tue 10 Nov 2026  Strength day  (dated Mon 9 Nov 2026 at first)");
        Run(11, "today").Lines.Should().Contain("why: you trained yesterday: a rest day comes between");
        Run(12, "today").Lines[1].Should().StartWith("why: Wednesday's skills day was put off for a rest day: it comes today");
        Run(11, "history squat").Lines.Should().Contain(l => l.Contains("Tue 10 Nov", StringComparison.Ordinal));
        var id = Run(11, "redate").Lines[0].Split(' ')[0];
        Run(11, $"redate {id} 3.11").Lines[0].Should().Be("Strength day of Mon 2 Nov 2026 is now of Tue 3 Nov 2026");
    }

    [Theory]
    [InlineData("redate 2026-11-09", "redate needs the session and the date it should have, such as rackside redate 2026-11-25 2026-11-26")]
    [InlineData("redate 2026-11-10 2026-11-09", "no session is of Tue 10 Nov 2026; rackside redate lists the last ones")]
    [InlineData("redate 2026-11-09 2026-11-30", "Mon 30 Nov 2026 is yet to come; a session has a date that has been")]
    [InlineData("redate 2026-11-09 2026-11-09", "that session is of Mon 9 Nov 2026 already")]
    [InlineData("redate 2026-11-09 31.11", "\"31.11\" is not a day of the calendar; write one such as 2026-12-20 or 20.12 (day.month)")]
    public void A_date_that_cannot_be_is_told_in_one_sentence(string line, string sentence) => A_slip_gets_one_sentence_and_64(line, sentence);

    [Theory]
    [InlineData("2026-11-05T18:00", "rackside: the clock shows Thu 5 Nov 2026, before the last entry, of Mon 9 Nov")]
    [InlineData("2038-01-19T03:14", "rackside: the clock shows Tue 19 Jan 2038, more than a year after the last")]
    public void A_command_says_so_where_the_clock_cannot_be_believed(string clock, string told) =>
        CommandLine.In(folder.Path, clock).Run("today").ErrorLines[0].Should().StartWith(told);

    [Fact]
    public void The_calendar_file_is_written_where_asked_and_nowhere_else()
    {
        var file = Path.Combine(folder.Path, "training.ics");

        var ran = CommandLine.In(folder.Path, "2026-11-11T18:00").RunWords("calendar", "--ics", file, "--at", "18:30", "--remind", "30");

        ran.Code.Should().Be(0);
        ran.Error.Should().Contain("16 training days written");
        Ical.Net.Calendar.Load(File.ReadAllText(file))!.Events.Should().HaveCount(16);
        CommandLine.In(folder.Path, "2026-11-11T18:00").RunWords("calendar", "--ics", Path.Combine(folder.Path, "none", "x.ics")).Code.Should().Be(73);
    }

    private Ran Run(int day, string line) => CommandLine.In(folder.Path, $"2026-11-{day:00}T18:00").Run(line);
}
