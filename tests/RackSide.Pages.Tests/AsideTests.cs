using System.Reflection;
using NodaTime;
using RackSide.Pages.Lifters;
using RackSide.Pages.Rack;
using RackSide.Pages.RestDays;
using RackSide.Pages.Settings;
using RackSide.Pages.SetUps;
using RackSide.Pages.Tests.Rack;
using RackSide.Training.Measures;

namespace RackSide.Pages.Tests;

/// <summary>The keys and the stop signs lie over every page outside a session, and go without having changed anything.</summary>
public class AsideTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 26, 18, 0);

    private static readonly PageSize Size = new(80, 24);

    private static readonly Dictionary<string, Func<IConversation>> ByName = new()
    {
        ["set-up"] = () => new SetUpConversation(MassUnit.Kilogram, "gym.yaml"),
        ["a session left open"] = () => new ResumeConversation("STRENGTH DAY  Wed 25 Nov", "Squat, working set 3 of 5 is next."),
        ["rest day"] = () => new RestDayConversation(new RestDayTexts("REST DAY", "Thu 26 Nov", "Thursday is a rest day.", "Fri 27 Nov", "strength day")),
        ["week page"] = () => new WeekConversation(RackPages.Week(RackPages.At("finish"))),
        ["who trains"] = () => new WhoConversation("Thu 26 Nov", [new WhoLine("Ottoline", "next Fri 27 Nov")], ""),
        ["PIN"] = () => new PinConversation("Bram", _ => true, default),
        ["settings"] = () => new SettingsConversation(new RackSettings(new ScreenSettings(), true), _ => null),
    };

    public static TheoryData<string> Names => [.. ByName.Keys];

    // Standard S3: one key back from any screen.
    [Theory]
    [MemberData(nameof(Names))]
    public void The_keys_and_the_stop_signs_come_by_one_key_and_go_by_one(string name)
    {
        var conversation = ByName[name]();
        var before = conversation.Draw(Size, Now).Text;
        foreach (var (open, title) in new[] { ("?", "THE KEYS"), ("h", "THE KEYS"), ("!", "STOP SIGNS") })
        {
            conversation.Press(open, Now);
            conversation.Draw(Size, Now).Text.Should().StartWith($" {title}");
            conversation.Press("ENTER", Now);
            conversation.Draw(Size, Now).Text.Should().Be(before);
            conversation.Ended.Should().BeFalse();
        }
    }

    [Fact]
    public void Every_key_is_told_on_the_smallest_page_too()
    {
        var week = ByName["week page"]();
        week.Press("?", Now);
        var seen = "";
        for (var line = 0; line < 60; line++)
        {
            seen += week.Draw(new PageSize(50, 15), Now).Text;
            week.Press("-", Now);
        }

        foreach (var row in KeyTable.Rows)
        {
            seen.Should().Contain((row.Lifting.Length > 0 ? row.Lifting : row.Choosing).Split(' ')[0]);
        }

        seen.Should().Contain("in a session:").And.Contain("leave; the session stays open");
    }

    [Fact]
    public void Where_letters_are_typed_h_is_a_letter_and_the_question_mark_still_helps()
    {
        var naming = new NameConversation("", []);
        naming.Press("h", Now);
        naming.Draw(Size, Now).Text.Should().Contain("[h");
        naming.Press("?", Now);
        naming.Draw(Size, Now).Text.Should().Contain("THE KEYS");
    }

    [Fact]
    public void A_page_that_waits_for_any_key_takes_these_too()
    {
        var settings = ByName["settings"]();
        settings.Press("6 ENTER ?", Now);
        settings.Draw(Size, Now).Text.Should().NotContain("THE KEYS");
    }

    [Fact]
    public void No_conversation_is_without_them() =>
        typeof(IConversation).Assembly.GetTypes()
            .Where(t => t is { IsClass: true, IsAbstract: false } && t.IsAssignableTo(typeof(IConversation)) && !t.IsAssignableTo(typeof(StillConversation)))
            .Should().NotBeEmpty().And.OnlyContain(t => t.GetFields(BindingFlags.Instance | BindingFlags.NonPublic).Any(f => f.FieldType == typeof(Aside)));
}
