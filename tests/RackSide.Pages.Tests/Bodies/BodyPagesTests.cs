using NodaTime;
using RackSide.Pages.Bodies;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Pages.Tests.Bodies;

/// <summary>The check-in, the page of the body, the facts behind it and the numbers the formulas want.</summary>
public class BodyPagesTests
{
    private static readonly LocalDate Today = new(2026, 11, 26);
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 7, 0);
    private static readonly Lifter Ottoline = new("first", "Ottoline Marsh", MassUnit.Kilogram, Now)
    {
        Body = new() { Height = Height.Cm(168), BornBy = new LocalDate(1985, 12, 31), Sex = FormulaSex.Female, Rises = new LocalTime(6, 30) },
    };

    private static readonly BodyStanding Standing = BodyStanding.For(Ottoline, WeighIns(Ottoline.Unit), Told(), Today);

    private static readonly (string Name, Func<IConversation> Made, string Keys)[] Cases =
    [
        ("check-in", () => CheckIn(), ""),
        ("check-in-typed", () => CheckIn(), "72.4"),
        ("check-in-asked-back", () => CheckIn(), "82.4 ENTER"),
        ("check-in-food", () => CheckIn(), "ENTER ENTER 2400"),
        ("check-in-sore", () => CheckIn(), "ENTER ENTER ENTER ENTER"),
        ("body", () => new StandingConversation(Standing), ""),
        ("body-nothing-told", () => new StandingConversation(BodyStanding.For(Ottoline with { Body = BodyProfile.Empty }, [], [], Today)), ""),
        ("body-no-targets", () => new StandingConversation(BodyStanding.For(Ottoline with { Body = Ottoline.Body with { NoTargets = true } }, WeighIns(Ottoline.Unit), Told(), Today)), ""),
        ("body-pounds", () => new StandingConversation(BodyStanding.For(Ottoline with { Unit = MassUnit.Pound }, WeighIns(MassUnit.Pound), [], Today)), ""),
        ("body-food", () => new StandingConversation(Standing), "3"),
        ("body-sleep", () => new StandingConversation(Standing), "4"),
        ("body-supplements", () => new StandingConversation(Standing), "5"),
        ("body-numbers", () => Profile(Ottoline.Body), ""),
        ("body-numbers-height", () => Profile(BodyProfile.Empty), "1 168"),
        ("body-numbers-reason", () => Profile(BodyProfile.Empty), "6"),
        ("body-numbers-eating-disorder", () => Profile(BodyProfile.Empty), "6 2"),
    ];

    public static TheoryData<string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, int, int>();
            foreach (var (name, _, _) in Cases)
            {
                foreach (var (columns, rows) in new[] { (50, 15), (80, 24), (120, 40), (30, 8) })
                {
                    data.Add(name, columns, rows);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void Each_page_is_as_expected_and_of_safe_glyphs(string name, int columns, int rows)
    {
        var (_, made, keys) = Cases.Single(c => c.Name == name);
        var conversation = made();
        conversation.Press(keys, Now);
        var page = conversation.Draw(new PageSize(columns, rows), Now);

        Expected.Match(page, name);
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
    }

    [Theory]
    [InlineData("72.4 ENTER 7.5 ENTER 2400 ENTER 2.5 ENTER 2", "72.4 kg, slept 7 h 30, 2400 kcal yesterday, 2.5 l yesterday, a little sore")]
    [InlineData("72,4 ENTER ENTER ENTER ENTER ENTER", "72.4 kg")]
    [InlineData("ENTER ENTER ENTER ENTER ENTER", "")]
    [InlineData("73 BACK 2 .4 ENTER ENTER ENTER ENTER 4", "72.4 kg")]
    [InlineData("500 ENTER BACK BACK BACK 72.4 ENTER ENTER ENTER ENTER 4", "72.4 kg")]
    [InlineData("82.4 ENTER ENTER ENTER ENTER ENTER 4", "82.4 kg")]
    [InlineData("82.4 ENTER BACK BACK BACK BACK 72.4 ENTER ENTER ENTER ENTER 4", "72.4 kg")]
    [InlineData("72.4 ENTER / BACK BACK BACK BACK ENTER ENTER ENTER ENTER 1", "not sore")]
    [InlineData("72.4 ENTER 8 ENTER / ENTER ENTER ENTER 3", "72.4 kg, slept 8 h, very sore")]
    [InlineData("72.4 ! 9 ENTER ENTER ENTER ENTER 4", "72.4 kg")]
    public void A_check_in_asks_one_thing_after_the_other(string keys, string told)
    {
        var conversation = CheckIn();
        conversation.Press(keys, Now);

        (conversation.Ended, conversation.Left, conversation.Answers.InWords).Should().Be((true, false, told));
    }

    [Fact]
    public void A_check_in_that_is_left_at_its_first_question_is_nothing()
    {
        var conversation = CheckIn();
        conversation.Press("72.4 ENTER / /", Now);

        (conversation.Ended, conversation.Left).Should().Be((true, true));
    }

    [Theory]
    [InlineData("19.9 ENTER", "Type a body weight, 20 to 350 kg.")]
    [InlineData("7..2 ENTER", "Type a body weight, 20 to 350 kg.")]
    [InlineData("ENTER 30 ENTER", "Type hours of sleep, 0 to 16")]
    [InlineData("ENTER ENTER 24 ENTER", "Type food in kilocalories, 300 to 10000")]
    [InlineData("ENTER ENTER ENTER 20 ENTER", "Type what was drunk in litres, 0 to 15.")]
    [InlineData("x", "That key does nothing here")]
    public void What_cannot_be_is_refused_and_kept_for_mending(string keys, string said)
    {
        var conversation = CheckIn();
        conversation.Press(keys, Now);

        conversation.Ended.Should().BeFalse();
        conversation.Draw(new PageSize(80, 24), Now).Text.Should().Contain(said);
    }

    [Theory]
    [InlineData("1", BodyChoice.CheckIn)]
    [InlineData("2", BodyChoice.Profile)]
    [InlineData("3 ENTER 4 / 5 - - ENTER ENTER", BodyChoice.Back)]
    [InlineData("/", BodyChoice.Back)]
    public void The_page_of_the_body_leads_on(string keys, BodyChoice choice)
    {
        var conversation = new StandingConversation(Standing);
        conversation.Press(keys, Now);

        conversation.Choice.Should().Be(choice);
    }

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_verdict_and_the_caution_can_be_read_at_every_working_size(int columns, int rows)
    {
        var conversation = new StandingConversation(Standing);
        var read = "";
        for (var i = 0; i < 40; i++)
        {
            read += conversation.Draw(new PageSize(columns, rows), Now).Text;
            conversation.Press("-", Now);
        }

        read.Should().Contain("verdict").And.Contain("advice.").And.Contain("kcal");
    }

    [Theory]
    [InlineData("1 168 ENTER 2 1985 ENTER 3 5 6.30 ENTER 8", "168 cm, 1985, Female, Light, 06:30, targets, shown")]
    [InlineData("3 3 4 8", "-, -, Male, Active, -, targets, shown")]
    [InlineData("6 1 ENTER 8", "-, -, -, Light, -, none, shown")]
    [InlineData("6 2 ENTER 6 4 8", "-, -, -, Light, -, targets, shown")]
    [InlineData("7 /", "-, -, -, Light, -, targets, hidden")]
    [InlineData("1 57 ENTER BACK BACK 168 ENTER /", "168 cm, -, -, Light, -, targets, shown")]
    [InlineData("1 / 2 ENTER /", "-, -, -, Light, -, targets, shown")]
    public void The_numbers_are_told_line_by_line(string keys, string told)
    {
        var conversation = Profile(BodyProfile.Empty);
        conversation.Press(keys, Now);
        if (conversation.Profile is null)
        {
            conversation.Press("/", Now);
        }

        var p = conversation.Profile!;
        $"{p.Height?.ToString() ?? "-"}, {p.BornBy?.Year.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "-"}, {p.Sex?.ToString() ?? "-"}, {p.Activity}, {p.Rises?.ToString("HH:mm", null) ?? "-"}, {(p.NoTargets ? "none" : "targets")}, {(p.Hidden ? "hidden" : "shown")}"
            .Should().Be(told);
    }

    [Fact]
    public void Whoever_weighs_in_pounds_tells_feet_and_inches_on_the_pad()
    {
        var conversation = new ProfileConversation(BodyProfile.Empty, Today, MassUnit.Pound, _ => null);
        conversation.Press("1 5.10 ENTER 8", Now);

        conversation.Profile!.Height.Should().Be(Height.Feet(5, 10));
    }

    [Fact]
    public void A_height_that_makes_no_body_with_the_weight_is_asked_back()
    {
        var conversation = new ProfileConversation(BodyProfile.Empty, Today, MassUnit.Kilogram, height => EntryDoubt.Of(height, Mass.Kg(110)));
        conversation.Press("1 130 ENTER", Now);

        conversation.Draw(new PageSize(80, 24), Now).Text.Should().Contain("hardly a height. ENTER again keeps it.");
        conversation.Press("ENTER 8", Now);
        conversation.Profile!.Height.Should().Be(Height.Cm(130));
    }

    private static CheckInConversation CheckIn() => new(Today, MassUnit.Kilogram, weight => EntryDoubt.Of(weight, WeighIns(MassUnit.Kilogram), BodyProfile.Empty, Today));

    private static ProfileConversation Profile(BodyProfile before) => new(before, Today, MassUnit.Kilogram, _ => null);

    // Ten weeks, four mornings in each, a quarter of a kilogram up a week.
    private static List<WeighIn> WeighIns(MassUnit unit) =>
    [
        .. Enumerable.Range(0, 70).Where(d => d % 7 is 1 or 2 or 4 or 6).Select(d =>
            new WeighIn(Today.PlusDays(d - 70), new Mass(Math.Round(Mass.Kg(70 + (0.036m * d) + (0.1m * (d * 7 % 5))).In(unit), 1), unit))),
    ];

    private static List<Fact> Told() =>
    [
        .. Enumerable.Range(0, 28).Select(d => (Fact)new DayTold(new FactId("rack", d + 1), Now, Today.PlusDays(-d))
        {
            Kilocalories = 2300 + (50 * (d % 5)),
            Slept = Duration.FromMinutes(400 + (10 * (d % 4))),
            Sore = d == 0 ? Soreness.Some : null,
        }),
    ];
}
