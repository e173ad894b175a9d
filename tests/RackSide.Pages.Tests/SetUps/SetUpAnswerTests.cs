using NodaTime;
using RackSide.Pages.SetUps;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using static NodaTime.IsoDayOfWeek;

namespace RackSide.Pages.Tests.SetUps;

public class SetUpAnswerTests
{
    private const string EnterAllTheWay = "ENTER ENTER ENTER ENTER ENTER ENTER ENTER ENTER ENTER";

    [Theory]
    [InlineData(MassUnit.Kilogram)]
    [InlineData(MassUnit.Pound)]
    public void Enter_all_the_way_gives_the_default_kit_of_the_unit_guessed(MassUnit guess) =>
        Answers(EnterAllTheWay, guess).ToKit().Should().BeEquivalentTo(KitDefaults.For(guess));

    [Fact]
    public void Enter_all_the_way_gives_three_days_a_name_and_no_caution()
    {
        var answers = Answers(EnterAllTheWay);
        answers.Name.Should().Be("Lifter");
        answers.TrainingDays.Should().Equal(Monday, Wednesday, Friday);
        (answers.CautionsRead, answers.AvoidInverted).Should().Be((false, false));
    }

    [Fact]
    public void There_are_no_answers_before_the_last_page_is_accepted() =>
        SetUpPages.After(EnterAllTheWay[..^5]).Answers.Should().BeNull();

    [Fact]
    public void Leaving_the_first_page_ends_without_answers()
    {
        var conversation = SetUpPages.After("q");
        (conversation.Ended, conversation.Answers).Should().Be((true, null));
    }

    [Theory]
    [InlineData("Ottoline SPACE Marsh", "Ottoline Marsh")]
    [InlineData("SPACE Juno SPACE", "Juno")]
    [InlineData("Brom BACK BACK am SPACE Okafor-Lind", "Bram Okafor-Lind")]
    [InlineData("Jun7o 8", "Juno")]
    [InlineData("BACK SPACE", "Lifter")]
    [InlineData("abcdefghijklmnopqrstuvwxyz", "abcdefghijklmnopqrst")]
    [InlineData("Zoë", "Zoë")]
    [InlineData("Ω", "Lifter")]
    public void A_name_is_what_letters_were_typed(string typed, string name) =>
        Answers($"ENTER {typed} {Rest(SetUpPage.Name)}").Name.Should().Be(name);

    [Theory]
    [InlineData("1", MassUnit.Kilogram)]
    [InlineData("2", MassUnit.Pound)]
    [InlineData("-", MassUnit.Pound)]
    [InlineData("- +", MassUnit.Kilogram)]
    [InlineData("DOWN", MassUnit.Pound)]
    [InlineData("3", MassUnit.Kilogram)]
    public void A_unit_is_chosen_by_digit_or_by_moving(string keys, MassUnit unit) =>
        Answers(On(SetUpPage.Unit, keys)).MassUnit.Should().Be(unit);

    [Theory]
    [InlineData("", 20)]
    [InlineData("2", 15)]
    [InlineData("- -", 10)]
    [InlineData("- - - +", 15)]
    public void A_bar_is_chosen_by_digit_or_by_moving(string keys, int kilograms) =>
        Answers(On(SetUpPage.Bar, keys)).Bar.Mass.Should().Be(Mass.Kg(kilograms));

    [Theory]
    [InlineData("3", 25, 3)]
    [InlineData("3 0", 25, 0)]
    [InlineData("+ +", 25, 2)]
    [InlineData("* 4", 20, 4)]
    [InlineData("* -", 20, 0)]
    [InlineData("* - -", 20, 0)]
    [InlineData("DOWN DOWN UP 2", 20, 2)]
    [InlineData("* * * * * * * * 5", 25, 5)]
    [InlineData("9 + + + + + + + + + + + +", 25, 20)]
    [InlineData("a d d", 25, 2)]
    public void Pairs_are_counted_line_by_line(string keys, int plate, int pairs) =>
        Answers(On(SetUpPage.Plates, keys)).Plates.Single(p => p.Mass == Mass.Kg(plate)).Pairs.Should().Be(pairs);

    [Fact]
    public void A_kit_holds_only_plates_that_are_owned_heaviest_first() =>
        Answers(On(SetUpPage.Plates, "0 * 0 * 2 * 0 * 1 * 0 * 0 * 3")).ToKit().Plates
            .Should().Equal(new PlatePairs(Mass.Kg(15), 2), new PlatePairs(Mass.Kg(5), 1), new PlatePairs(Mass.Kg(0.5m), 3));

    [Theory]
    [InlineData("2", "safety bars", false)]
    [InlineData("2 2", "safety bars", true)]
    [InlineData("6", "cable stack", true)]
    [InlineData("- - *", "bench", false)]
    [InlineData("1 2 3 4 5 7 8 9", "mat", false)]
    public void Other_kit_is_ticked_by_digit_or_by_the_star(string keys, string word, bool owned) =>
        Answers(On(SetUpPage.OtherKit, keys)).ToKit().Equipment.Contains(word).Should().Be(owned);

    [Fact]
    public void What_is_asked_about_is_named_in_the_catalogues_words() =>
        KitOption.All.Select(option => option.Word).Should().BeSubsetOf(KitDefaults.EquipmentWords);

    [Fact]
    public void Without_dumbbells_the_kit_has_no_masses_of_them() =>
        Answers(On(SetUpPage.OtherKit, "5")).ToKit().Dumbbells.Should().BeEmpty();

    [Theory]
    [InlineData("6", 5)]
    [InlineData("6 0", 7.5)]
    [InlineData("6 0 0 0", 2.5)]
    [InlineData("0 6", 5)]
    public void A_cable_stack_has_the_step_chosen(string keys, double step) =>
        Answers(On(SetUpPage.OtherKit, keys)).ToKit().Stack.Take(3)
            .Should().Equal(new[] { 1m, 2m, 3m }.Select(n => Mass.Kg((decimal)step * n)));

    [Fact]
    public void Without_a_cable_stack_there_are_no_positions() =>
        Answers(On(SetUpPage.OtherKit, "6 6")).ToKit().Stack.Should().BeEmpty();

    [Theory]
    [InlineData("3 4 5 6", new[] { Monday, Thursday, Saturday })]
    [InlineData("1 3 5 2 4 7", new[] { Tuesday, Thursday, Sunday })]
    [InlineData("* - *  3 5 4 6", new[] { Tuesday, Thursday, Saturday })]
    public void Three_days_with_a_day_between_are_taken(string keys, IsoDayOfWeek[] days) =>
        Answers(On(SetUpPage.Days, keys)).TrainingDays.Should().Equal(days);

    [Theory]
    [InlineData("5", "Three days are wanted; 2 are ticked.")]
    [InlineData("3 5", "Three days are wanted; 1 is ticked.")]
    [InlineData("7", "Three days are wanted; 4 are ticked.")]
    [InlineData("1 2", "Tue and Wed touch: leave a day between.")]
    [InlineData("5 7", "Sun and Mon touch: leave a day between.")]
    public void Other_days_are_refused_in_one_sentence(string keys, string sentence)
    {
        var conversation = SetUpPages.After($"{Lead(SetUpPage.Days)} {keys} ENTER");
        var text = conversation.Draw(new PageSize(50, 15), SetUpPages.Now).Text;
        text.Should().Contain(sentence).And.Contain("training days");
    }

    [Theory]
    [InlineData("", false, false)]
    [InlineData("1", true, false)]
    [InlineData("2", true, true)]
    [InlineData("3", true, false)]
    [InlineData("4", true, true)]
    [InlineData("5", true, false)]
    [InlineData("1 2 3 4 5", true, true)]
    [InlineData("4 4", false, false)]
    public void A_yes_brings_its_advice_and_locks_nobody_out(string keys, bool read, bool avoidInverted)
    {
        var advice = string.Concat(Enumerable.Repeat("ENTER ", 5));
        var answers = Answers($"{Lead(SetUpPage.Safety)} {keys} ENTER {advice} ENTER");
        (answers.CautionsRead, answers.AvoidInverted).Should().Be((read, avoidInverted));
    }

    [Fact]
    public void Each_yes_has_one_page_of_advice()
    {
        SetUpPages.After($"{Lead(SetUpPage.Safety)} 2 5 ENTER ENTER ENTER").Ended.Should().BeFalse();
        SetUpPages.After($"{Lead(SetUpPage.Safety)} 2 5 ENTER ENTER ENTER ENTER").Ended.Should().BeTrue();
    }

    [Fact]
    public void Going_back_to_the_first_page_and_on_again_loses_nothing()
    {
        var there = "ENTER Juno ENTER 2 ENTER 2 ENTER * 3 ENTER 6 0 ENTER 1 3 5 2 4 6 ENTER 4 ENTER ENTER";
        var back = string.Concat(Enumerable.Repeat("/ ", 10));
        var answers = Answers($"{there} {back} {EnterAllTheWay} ENTER");
        answers.Should().BeEquivalentTo(Answers($"{there} ENTER"));
        (answers.Name, answers.MassUnit, answers.AvoidInverted).Should().Be(("Juno", MassUnit.Pound, true));
    }

    [Fact]
    public void Looking_at_the_other_unit_loses_no_plates()
    {
        var kilograms = Answers($"{Lead(SetUpPage.Plates)} 3 ESC ESC 2 ENTER ENTER ESC ESC 1 {Rest(SetUpPage.Unit)}");
        kilograms.Plates[0].Should().Be(new PlatePairs(Mass.Kg(25), 3));
    }

    [Fact]
    public void The_first_page_has_no_page_before_it()
    {
        var conversation = SetUpPages.After("ESC / ESC");
        conversation.Ended.Should().BeFalse();
        conversation.Draw(new PageSize(80, 24), SetUpPages.Now).Text.Should().Contain("This is the first page");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(8)]
    public void The_stop_signs_are_one_key_from_every_page_and_any_key_goes_back(int pages)
    {
        var lead = string.Concat(Enumerable.Repeat("ENTER ", pages));
        var (page, signs, after) = (Text(lead), Text(lead + "!"), Text(lead + "! 5"));
        signs.Should().Contain("STOP SIGNS").And.NotContain("SET-UP");
        after.Should().Be(page);
    }

    [Fact]
    public void Every_answer_but_the_name_can_be_given_from_the_numeric_pad()
    {
        var answers = Answers("ENTER ENTER 2 ENTER 3 ENTER + * 2 ENTER 6 0 ENTER 1 3 5 2 4 6 ENTER 5 ENTER ENTER ENTER");
        answers.Bar.Mass.Should().Be(Mass.Lb(33));
        answers.Plates.Take(2).Select(p => p.Pairs).Should().Equal(2, 2);
        answers.StackStep.Should().Be(Mass.Lb(15));
        answers.TrainingDays.Should().Equal(Tuesday, Thursday, Saturday);
        answers.CautionsRead.Should().BeTrue();
    }

    private static SetUpAnswers Answers(string keys, MassUnit guess = MassUnit.Kilogram) =>
        SetUpPages.After(keys, guess).Answers ?? throw new InvalidOperationException($"'{keys}' did not finish the set-up");

    private static string Text(string keys) => SetUpPages.After(keys).Draw(new PageSize(80, 24), SetUpPages.Now).Text;

    private static string On(SetUpPage page, string keys) => $"{Lead(page)} {keys} {Rest(page)}";

    private static string Lead(SetUpPage page) => string.Concat(Enumerable.Repeat("ENTER ", (int)page));

    private static string Rest(SetUpPage page) => string.Concat(Enumerable.Repeat("ENTER ", SetUpOrder.Pages - (int)page));
}
