using NodaTime;
using RackSide.Pages.Plain;
using RackSide.Pages.Rack;
using RackSide.Pages.Tests.Rack;
using RackSide.Training.Sessions;
using TheRack = RackSide.Tollbooth.Rack;

namespace RackSide.Pages.Tests.Plain;

/// <summary>The same pages line by line.</summary>
public class PlainTests
{
    // Standard S26 of docs/screen.md.
    [Fact]
    public void A_rest_to_its_end_is_at_most_four_announcements_with_the_set_that_follows()
    {
        var rack = RackPages.At("rest");
        var speech = new PlainSpeech();
        List<IReadOnlyList<string>> said = [speech.AfterTime(Read(rack))];
        for (var i = 0; i < 150; i++)
        {
            said.Add(speech.AfterTime(Read(rack.Wait(1))));
        }

        said = [.. said.Where(lines => lines.Count > 0)];
        said.Should().HaveCount(4);
        said[0].Should().Contain(line => line.StartsWith("REST   set ")).And.Contain("1:47");
        said[1].Should().Equal("0:30 left");
        said[2].Should().Equal("0:10 left");
        said[3].Should().Contain("67.5 kg x 5").And.Contain(line => line.StartsWith("LIFT  working set 2 of 5"));
    }

    [Fact]
    public void Time_that_jumps_over_both_marks_is_told_once() => AfterJump(from: 45, to: 5).Should().Equal("0:10 left");

    [Fact]
    public void After_a_key_only_what_changed_is_said()
    {
        var rack = RackPages.At("lift");
        var speech = new PlainSpeech();
        speech.AfterTime(Read(rack));

        speech.AfterKeys(Read(rack.Press("-"))).Should().Equal(
            "67.5 kg x 4", "keys: ENTER did 4, 0-9 type reps, - one fewer, / as asked, . undo warm-up set 4, * other weight");
        speech.AfterKeys(Read(rack)).Should().Equal("nothing changed");
    }

    [Fact]
    public void A_hold_tells_when_it_begins_and_when_its_target_is_met()
    {
        var rack = RackPages.At("hold-ready").Wait(2).Press("E");
        var speech = new PlainSpeech();
        List<string> said = [.. speech.AfterTime(Read(rack)).Take(0)];
        for (var i = 0; i < 40; i++)
        {
            said.AddRange(speech.AfterTime(Read(rack.Wait(1))));
        }

        said.Should().Equal("HOLD", "TARGET MET");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_page_says_something_in_printable_ASCII_and_names_its_keys(string name)
    {
        var page = Read(RackPages.At(name));

        page.Lines.Should().NotBeEmpty();
        page.Lines.Append(page.Keys).SelectMany(line => line).Should().OnlyContain(c => c >= ' ' && c <= '~');
        page.Keys.Should().StartWith("keys: ").And.HaveLength(page.Keys.Trim().Length);
    }

    public static TheoryData<string> Names => [.. RackPages.AtAllSizes.Select(row => (string)((object[])row)[0]).Distinct()];

    [Theory]
    [InlineData("", "ENTER")]
    [InlineData("  ", "ENTER")]
    [InlineData("*-", "* -")]
    [InlineData("/ 5", "/ 5")]
    [InlineData("62,5", "6 2 , 5")]
    [InlineData("Undo", "u")]
    [InlineData("q", "q")]
    public void A_line_is_a_word_or_keys(string line, string keys) =>
        PlainEntry.Presses(line, new Telling()).Should().Equal(Keys.Parse(keys));

    [Theory]
    [InlineData("mad")]
    [InlineData("5 reps")]
    [InlineData("#")]
    public void A_line_that_means_nothing_presses_nothing(string line) => PlainEntry.Presses(line, new Telling()).Should().BeNull();

    [Fact]
    public void Where_letters_are_typed_a_line_is_what_it_says_and_ENTER() =>
        PlainEntry.Presses("menu", new Telling { TakesLetters = true }).Should().Equal(Keys.Parse("m e n u ENTER"));

    private static IReadOnlyList<string> AfterJump(double from, double to)
    {
        var rack = RackPages.At("rest");
        rack.Wait(((Resting)rack.Phase).Clock.Left(rack.Now).TotalSeconds - from);
        var speech = new PlainSpeech();
        speech.AfterTime(Read(rack));
        return speech.AfterTime(Read(rack.Wait(from - to)));
    }

    private static PlainPage Read(TheRack rack)
    {
        var week = rack.Phase is Finishing or Ended ? RackPages.Week(rack) : null;
        return PlainPage.Of(SessionPages.Draw(rack.Session, week, PageSize.ToRead, rack.Now).InAscii());
    }
}
