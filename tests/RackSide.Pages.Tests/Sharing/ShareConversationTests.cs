using NodaTime;
using RackSide.Pages.Calendars;
using RackSide.Pages.Sharing;

namespace RackSide.Pages.Tests.Sharing;

public class ShareConversationTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 11, 25, 18, 0);

    private static readonly string[] Plans =
        ["Ottoline Marsh: back squat 5x5 60 kg, bb row 3x6 40 kg", "Bram Okafor-Lind: back squat 5x5 90 kg, bb row 3x6 70 kg"];

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(30, 8)]
    public void The_page_before_it_begins_is_as_expected(int columns, int rows) =>
        Expected.Match(new ShareConversation(Plans).Draw(new PageSize(columns, rows), Now), "share");

    [Theory]
    [InlineData("ENTER", true, true)]
    [InlineData("/", true, false)]
    [InlineData("7", false, false)]
    public void Enter_begins_and_slash_goes_back(string keys, bool ended, bool begun)
    {
        var page = new ShareConversation(Plans);
        Keys.Parse(keys).ToList().ForEach(key => page.Press(key, Now));

        page.Ended.Should().Be(ended);
        page.Begun.Should().Be(begun);
    }

    [Fact]
    public void The_list_behind_the_plan_offers_each_partner()
    {
        var more = new MoreConversation("STRENGTH DAY  Wed 25 Nov", trimmed: false, partners: ["Bram Okafor-Lind", "Juno Petrov"]);
        more.Draw(new PageSize(80, 24), Now).Text.Should().Contain("2  share the bar with Bram Okafor-Lind").And.Contain("3  share the bar with Juno Petrov");

        more.Press(KeyPress.Of('3'), Now);

        more.Choice.Should().Be(MoreChoice.Share);
        more.Partner.Should().Be(1);
    }
}
