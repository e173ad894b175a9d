using System.Text.Json;
using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Tests.Commands;

/// <summary>Check-ins and the body on the command line, in a gym of two: one weighs in kilograms, one in pounds.</summary>
public sealed class BodyCommandTests : IDisposable
{
    private readonly PassingFolder folder = new();

    public BodyCommandTests()
    {
        var joined = Instant.FromUtc(2026, 11, 1, 18, 0);
        using var logbook = LiteLogbook.Open(folder.Path, joined);
        logbook.Keep(new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, joined));
        logbook.Keep(new Lifter("second", "Bram Okafor-Lind", MassUnit.Pound, joined.Plus(Duration.FromDays(1))));
    }

    [Theory]
    [InlineData("weigh 72.4", "written: 72.4 kg; Thu 26 Nov 2026")]
    [InlineData("weigh 72,4", "written: 72.4 kg; Thu 26 Nov 2026")]
    [InlineData("weigh 72,4 kg", "written: 72.4 kg; Thu 26 Nov 2026")]
    [InlineData("weigh 159.6lb", "written: 159.6 lb; Thu 26 Nov 2026")]
    [InlineData("weigh 179,5 --lifter Bram", "written: 179.5 lb; Thu 26 Nov 2026")]
    [InlineData("weigh 72.4 --slept 7:30 --food 2600 --water 2,5 --sore some", "written: 72.4 kg, slept 7 h 30, 2600 kcal yesterday, 2.5 l yesterday, a little sore; Thu 26 Nov 2026")]
    [InlineData("weigh --slept 7.5 --sore none", "written: slept 7 h 30, not sore; Thu 26 Nov 2026")]
    [InlineData("weigh 72.4 --on yesterday", "written: 72.4 kg; Wed 25 Nov 2026")]
    [InlineData("weigh", "nobody was weighed yet; write rackside weigh 72.4")]
    public void A_check_in_is_written_and_said(string line, string said)
    {
        var ran = Run(line);

        (ran.Code, ran.Error).Should().Be((0, ""));
        string.Join(' ', ran.Lines.Select(l => l.Trim())).Should().StartWith(said);
    }

    [Theory]
    [InlineData("weigh heavy", "\"heavy\": type a body weight, 20 to 350 kg")]
    [InlineData("weigh 8.1.4", "\"8.1.4\": type a body weight, 20 to 350 kg")]
    [InlineData("weigh 814", "\"814\": type a body weight, 20 to 350 kg")]
    [InlineData("weigh 900lb", "\"900lb\": type a body weight, 45 to 771 lb")]
    [InlineData("weigh 72 --slept 30", "--slept: \"30\": type hours of sleep, 0 to 16: 7.5 or 7:30 is half past seven hours")]
    [InlineData("weigh 72 --slept 7:75", "--slept: \"7:75\": type hours of sleep, 0 to 16: 7.5 or 7:30 is half past seven hours")]
    [InlineData("weigh 72 --food lots", "--food: \"lots\": type food in kilocalories, 300 to 10000; about will do")]
    [InlineData("weigh 72 --water 25", "--water: \"25\": type what was drunk in litres, 0 to 15")]
    [InlineData("weigh 72 --sore very", "--sore: \"very\": write none, some or much")]
    [InlineData("weigh 72 --on tomorrow", "--on: Fri 27 Nov 2026 is still to come")]
    [InlineData("weigh 72 --on soon", "\"soon\" is not a date; write one such as 2026-12-20 or 20.12 (day.month)")]
    [InlineData("body --height 57", "--height: \"57\" will not do; write 178, 1.78 m or 5'10\"")]
    [InlineData("body --age old", "--age: \"old\" will not do; write an age in years, such as 41")]
    [InlineData("body --born 2026", "--born: \"2026\" will not do; write the year you were born in")]
    [InlineData("body --age 41 --born 1985", "--age or --born: write one of them")]
    [InlineData("body --sex unsure", "--sex: \"unsure\" will not do; write female or male")]
    [InlineData("body --rises late", "--rises: \"late\" will not do; write a time such as 6:30")]
    [InlineData("body --hide --show", "the one option undoes the other; write one of them")]
    [InlineData("body --facts steroids", "--facts: \"steroids\" is no page; write food, sleep or supplements")]
    public void What_cannot_be_told_gets_one_sentence(string line, string sentence)
    {
        var ran = Run(line);

        (ran.Code, ran.Out).Should().Be((64, ""));
        ran.ErrorLines.Should().Equal($"rackside: {sentence}");
    }

    [Fact]
    public void Where_one_word_of_a_check_in_is_refused_none_is_written()
    {
        Run("weigh 72 --food lots");

        Run("weigh").Lines.Should().Equal("nobody was weighed yet; write rackside weigh 72.4");
    }

    [Fact]
    public void A_slip_is_asked_back_and_kept_only_when_meant()
    {
        Run("weigh 72.4 --on yesterday");

        Run("weigh 82.4").ErrorLines.Should().Equal("rackside: 82.4 kg is 10 kg more than the last, 72.4 kg on Wed 25 Nov; if it is right add --sure");
        Run("weigh 159.6").ErrorLines.Should().Equal("rackside: 159.6 kg is 87.2 kg more than the last, 72.4 kg on Wed 25 Nov; is 159.6 lb meant?; if it is right add --sure");
        Run("weigh").Lines.Should().Equal("Wed 25 Nov 2026  72.4 kg", "trend     no clear trend yet: 1 weighing over 1 day; 6 over 14 are the least");
        Run("weigh 82.4 --sure").Code.Should().Be(0);
    }

    [Fact] // Davis 1990 as carData has it, from memory: 166 kg and 57 cm of a woman of 57 kg and 166 cm.
    public void Height_and_weight_changed_about_are_caught()
    {
        Run("weigh 166");

        Run("body --height 57").ErrorLines.Should().Equal(
            "rackside: --height: \"57\" will not do; 57 cm with a body weight of 166 kg looks like the two numbers changed about; write 178, 1.78 m or 5'10\"");
        Run("weigh 57 --sure");
        Run("body --height 166").Code.Should().Be(0);
        Run("weigh 166").ErrorLines.Should().Equal("rackside: 166 kg with a height of 166 cm looks like the two numbers changed about; if it is right add --sure");
    }

    [Fact]
    public void What_the_formulas_want_is_told_once_and_gives_need_and_target()
    {
        Run("weigh 80");
        var ran = Run("body --height 180 --age 30 --sex male --rises 6:30");

        ran.Error.Should().BeEmpty();
        ran.Lines.Should().Contain("told      180 cm, 30 years, formulas for men, light days, up at 06:30")
            .And.Contain("target    3010 to 3260 kcal a day, in 5 meals of about 600 to 700")
            .And.Contain(l => l.StartsWith("need      2760 kcal a day by Mifflin-St Jeor"))
            .And.Contain("protein   112 to 160 g a day, 20 to 40 a meal")
            .And.Contain(l => l.EndsWith("in bed by 22:45"))
            .And.Contain("caution   General information for healthy adults, not medical advice.")
            .And.OnlyContain(l => l.Length <= 80);
        Run("body").Lines.Should().Equal(ran.Lines);
    }

    [Fact]
    public void In_feet_and_pounds()
    {
        Run("weigh 179,5 --lifter Bram");

        Run("body --lifter Bram --height 5.10 --born 1988 --sex male").Out.Should().Contain("told      5 ft 10 in, 37 years").And.Contain("179.5 lb on Thu 26 Nov");
        Run("body --lifter Bram --height 181").Out.Should().Contain("told      181 cm");
    }

    [Theory]
    [InlineData("body --no-targets pregnancy", "No targets while pregnant or nursing")]
    [InlineData("body --no-targets eating-disorder", "No targets and no verdicts on weight. Ask the people who treat you")]
    [InlineData("body --age 16", "No targets under 18")]
    public void Where_there_are_no_targets_it_is_said_whom_to_ask_and_no_number_is_given(string line, string said)
    {
        Run("weigh 60");
        Run("body --height 165 --age 40 --sex female");

        string.Join(' ', Run(line).Lines.Select(l => l.Trim())).Should().Contain(said);
        Run("body").Out.Should().NotContain("kcal").And.NotContain("protein").And.Contain("No targets");
        using var json = JsonDocument.Parse(Run("body --json").Out);
        json.RootElement.GetProperty("targetKilocalories").ValueKind.Should().Be(JsonValueKind.Null);
        json.RootElement.GetProperty("noTargets").GetString().Should().Contain("sk ");
    }

    [Fact]
    public void Which_reason_was_told_is_not_on_the_disk()
    {
        Run("body --no-targets eating-disorder");
        Run("body --targets").Out.Should().NotContain("No targets");
        Run("body --no-targets pregnancy");

        folder.Entries.Where(File.Exists).Select(File.ReadAllText).Should().OnlyContain(text => !text.Contains("eating") && !text.Contains("pregnan"));
    }

    [Fact]
    public void All_of_it_can_be_hidden_and_shown_again()
    {
        Run("weigh 72.4");
        Run("body --hide").Lines.Should().Equal("weight, food and sleep are hidden; rackside body --show shows them again");
        Run("body --json").Out.Should().NotContain("72.4");
        Run("summary").Out.Should().NotContain("body weight");
        Run("body --show").Out.Should().Contain("72.4 kg");
        Run("summary").Out.Should().Contain("body weight");
    }

    [Theory]
    [InlineData("food", "protein")]
    [InlineData("sleep", "the aim is 7 h 30")]
    [InlineData("supplements", "Supplements come last")]
    public void The_pages_of_facts_have_sources_and_the_caution(string page, string says)
    {
        var ran = Run($"body --facts {page}");

        string.Join(' ', ran.Lines.Select(l => l.Trim())).ToLowerInvariant().Should().Contain(says.ToLowerInvariant().Replace("the aim is", "aim is"))
            .And.Contain("source:").And.Contain("not medical advice");
        ran.Lines.Should().OnlyContain(l => l.Length <= 80);
    }

    public void Dispose() => folder.Dispose();

    private Ran Run(string line) => CommandLine.In(folder.Path, "2026-11-26T08:00").Run(line);
}
