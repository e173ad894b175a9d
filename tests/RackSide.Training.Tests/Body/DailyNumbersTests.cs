using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Body;

/// <summary>Protein, water, sleep, soreness, and all of it joined.</summary>
public class DailyNumbersTests
{
    private static readonly LocalDate Today = new(2026, 11, 26);
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 8, 0);
    private static readonly Lifter Bram = new("first", "Bram Okafor-Lind", MassUnit.Pound, Now);

    [Theory] // Jäger et al. 2017, J Int Soc Sports Nutr 14:20 (seen): 1.4-2.0 g/kg a day, 0.25 g/kg or 20-40 g a meal.
    [InlineData(80, 112, 160, 20)]
    [InlineData(60, 84, 120, 20)]
    [InlineData(100, 140, 200, 25)]
    public void Protein_by_body_mass(int kg, int least, int most, int aMeal) =>
        ProteinAdvice.Of(kg).Should().Be(new ProteinAdvice(least, most, aMeal, 40));

    [Theory] // Morton et al. 2018 (second-hand): no more muscle above 1.62 g/kg, 95 % interval 1.03 to 2.20.
    [InlineData(80, 129.6)]
    [InlineData(60, 97.2)]
    public void The_range_of_protein_holds_the_plateau_of_the_review(int kg, double plateau) =>
        plateau.Should().BeInRange(ProteinAdvice.Of(kg).LeastADay, ProteinAdvice.Of(kg).MostADay);

    // Drunk: four fifths of EFSA 2010's 2.5 and 2.0 l (seen) up to the IOM 2004's 3.0 and 2.2 l of drinks (from memory), for
    // reference bodies of 70 and 57 kg (from memory).
    [Theory]
    [InlineData(70, 2.0, 3.0)]
    [InlineData(57, 1.6, 2.2)]
    public void Water_reaches_from_one_source_to_the_other(int kg, double efsa, double iom)
    {
        ((double)WaterAdvice.Of(kg).Least).Should().BeApproximately(efsa, 0.05);
        ((double)WaterAdvice.Of(kg).Most).Should().BeApproximately(iom, 0.21);
    }

    [Fact] // 100 µg = 4000 IU: EFSA J 2012;10(7):2813 (seen); 1 µg is 40 IU.
    public void The_upper_level_of_vitamin_D() => SupplementFacts.All.Should().ContainSingle(s => s.Name == "vitamin D")
        .Which.Limit.Should().Be("100 µg (4000 IU) a day in all");

    [Fact] // Kreider et al. 2017, J Int Soc Sports Nutr 14:18 (second-hand); EFSA J 2012;10(7):2815 (seen).
    public void Supplements_say_how_much_who_asks_first_and_who_says_so()
    {
        SupplementFacts.All.Select(s => s.Name).Should().Equal(
            "creatine monohydrate", "vitamin D", "omega-3 (EPA and DHA)", "multivitamin", "probiotics, fermented food");
        SupplementFacts.All.Should().OnlyContain(s => s.Limit.Length > 0 && s.AskFirst.Length > 0 && s.Source.Length > 0);
        SupplementFacts.All[0].Says.Should().Contain("3 to 5 g a day");
        SupplementFacts.All[2].Limit.Should().Contain("5 g a day");
        SupplementFacts.Least.Should().Contain("come last");
    }

    [Fact]
    public void Every_fact_has_a_source() => FoodFacts.All.Concat(SleepFacts.All).Should().OnlyContain(f => f.Source.Length > 0 && f.Says.EndsWith('.'));

    [Theory]
    [InlineData("6.5 7 8", "7 h 10", false, true)]
    [InlineData("5 5.5 6", "5 h 30", true, true)]
    [InlineData("8 8 8", "8 h", false, false)]
    public void Sleep_against_a_floor_of_six_hours_and_an_aim_of_seven_and_a_half(string nights, string mean, bool underFloor, bool underAim)
    {
        var days = nights.Split(' ').Select((h, i) => Day(-i) with { Slept = Duration.FromHours(double.Parse(h, System.Globalization.CultureInfo.InvariantCulture)) });
        var sleep = SleepAdvice.Of([.. days], rises: null, Today);

        (Readiness.Text(sleep.Mean!.Value), sleep.UnderFloor, sleep.UnderAim, sleep.Nights).Should().Be((mean, underFloor, underAim, 3));
    }

    [Fact] // 7 h 30 and a quarter of an hour before.
    public void The_bedtime_follows_from_the_rising_time() =>
        SleepAdvice.Of([], new LocalTime(6, 30), Today).Bedtime.Should().Be(new LocalTime(22, 45));

    [Theory]
    [InlineData(7.5, Soreness.None, "slept 7 h 30, not sore: the plan stands.")]
    [InlineData(5.5, Soreness.Some, "slept 5 h 30, a little sore: a short night; the plan stands, stop a rep earlier and go to bed early.")]
    [InlineData(8.0, Soreness.Much, "slept 8 h, very sore: warm up longer, spare what is very sore, and leave out what hurts.")]
    public void Readiness_is_sleep_and_soreness_in_words(double hours, Soreness sore, string said) =>
        Readiness.Of(Day(0) with { Slept = Duration.FromHours(hours), Sore = sore }).Should().Be(said).And.NotMatchRegex(@"\d+ ?(%|of 100|/ ?10)");

    [Fact]
    public void Nothing_told_is_no_readiness() => Readiness.Of(Day(0)).Should().BeNull();

    [Fact]
    public void Of_each_thing_of_a_day_the_word_told_last_counts()
    {
        var first = Day(0, 1) with { Slept = Duration.FromHours(7), Kilocalories = 2000 };
        var second = Day(0, 2) with { Kilocalories = 2600, Millilitres = 2500 };

        DaysTold.Of([first, second, Day(-1, 3)]).Last().Should().Be(second with { Slept = first.Slept });
    }

    [Fact]
    public void An_age_told_once_goes_on_by_itself_and_is_never_too_high()
    {
        var profile = new BodyProfile { BornBy = new LocalDate(1985, 12, 31) };

        profile.AgeOn(Today).Should().Be(40, "born in 1985 may be born on its last day");
        profile.AgeOn(Today.PlusYears(1)).Should().Be(41);
    }

    [Fact]
    public void A_standing_joins_what_was_told()
    {
        var told = VerdictTests.Eaten(28, 2800);
        var standing = BodyStanding.For(Bram with { Body = Known }, Steady(0.05m), told, Today);

        standing.Missing.Should().BeEmpty();
        standing.Trend!.PerWeek.Should().BeApproximately(0.35, 0.01);
        standing.Verdict!.Word.Should().Be(GainWord.Stay);
        standing.Learned!.Kilocalories.Should().BeApproximately(2800 - 385, 12);
        standing.UsesLearned.Should().BeTrue();
        standing.Target.Should().Be(EnergyTarget.Over((decimal)standing.Learned.Kilocalories, standing.Need!.Resting));
        standing.Weeks.Should().HaveCount(5).And.OnlyContain(w => w.Mean.Unit == MassUnit.Pound);
    }

    [Fact]
    public void Without_enough_told_there_is_no_target_and_it_is_said_what_is_missing()
    {
        var standing = BodyStanding.For(Bram, [], [], Today);

        (standing.Need, standing.Target, standing.Protein).Should().Be((null, null, null));
        standing.Missing.Should().Equal("a body weight", "height", "age", "sex for the formula");
    }

    [Fact]
    public void Where_targets_are_refused_there_is_no_verdict_either_and_the_weights_stay()
    {
        var standing = BodyStanding.For(Bram with { Body = Known with { NoTargets = true } }, Steady(0.2m), VerdictTests.Eaten(28, 2800), Today);

        (standing.Verdict, standing.Target, standing.Need, standing.Learned, standing.Protein).Should().Be((null, null, null, null, null));
        standing.Refusal.Should().Be(TargetRefusal.Told);
        (standing.Trend, standing.Last).Should().NotBe((null, null));
    }

    [Fact]
    public void A_need_learned_below_that_at_rest_is_not_believed()
    {
        var standing = BodyStanding.For(Bram with { Body = Known }, Steady(0.05m), VerdictTests.Eaten(28, 1500), Today);

        standing.UsesLearned.Should().BeFalse();
        standing.Target!.Least.Should().BeGreaterThan(2500);
    }

    [Fact]
    public void A_holiday_within_two_weeks_is_told_because_of_its_water()
    {
        AwayTold holiday = new(new FactId("rack", 9), Now, Today.PlusDays(-20), Today.PlusDays(-10), AwayFor.Holiday);

        BodyStanding.For(Bram, Steady(0.05m), [holiday], Today).HolidayInWindow.Should().BeTrue();
        BodyStanding.For(Bram, Steady(0.05m), [holiday with { For = AwayFor.Illness }], Today).HolidayInWindow.Should().BeFalse();
        BodyStanding.For(Bram, Steady(0.05m), [holiday], Today.PlusDays(10)).HolidayInWindow.Should().BeFalse();
    }

    private static BodyProfile Known => new() { Height = Height.Cm(180), BornBy = new LocalDate(1988, 3, 1), Sex = FormulaSex.Male };

    private static WeighIn[] Steady(decimal aDay) =>
        [.. Enumerable.Range(0, 28).Select(i => new WeighIn(Today.PlusDays(i - 27), Mass.Kg(80 + (aDay * i) + (0.1m * (i % 3)))))];

    private static DayTold Day(int from, int sequence = 1) => new(new FactId("rack", sequence), Now, Today.PlusDays(from));
}
