using RackSide.Pages.Sharing;
using RackSide.Tollbooth;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Tests.Sharing;

/// <summary>Every page of two lifters on one bar, each by how they get there.</summary>
public class SharedPageTests
{
    private static readonly Dictionary<string, Func<Pair>> ByName = new()
    {
        ["checks"] = () => Pair.Strength().Wait(3),
        ["ramp"] = () => Pair.Strength().Check().Lift().Wait(4),
        ["lift"] = () => Working().Wait(4),
        ["lift-others-rest"] = () => Working().Lift().RestOut().Wait(3),
        ["lift-doubt"] = () => Working().Lift().RestOut().Press("*85E"),
        ["lift-miss-of-the-other"] = () => Working().Wait(30).Press("3E").Wait(2),
        ["rest"] = () => Working().Lift().RestOut().Lift().Wait(10),
        ["rest-out-of-turn"] = () => Working().Lift().RestOut().Lift().Wait(10).Press("2").Wait(2),
        ["list"] = () => Working().Lift().Wait(3).Press("/*"),
        ["menu"] = () => Working().Lift().Wait(3).Press("/"),
        ["elsewhere"] = () => Pair.Strength().Check().To(b => b.InTurn.Place.Current is SetItem { Slot: "curl" } && b.InTurn.Phase is Lifting),
        ["hold"] = () => Pair.Strength().Check().To(b => b.InTurn.Phase is Holding),
        ["alone"] = () => Working().Lift().RestOut().Press("/*3").Wait(1),
    };

    public static TheoryData<string, int, int> Pages
    {
        get
        {
            var data = new TheoryData<string, int, int>();
            foreach (var name in ByName.Keys)
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
        var page = Drawn(ByName[name](), columns, rows);

        Expected.Match(page, $"shared-{name}");
        SafeGlyphs.Unsafe(page).Should().BeEmpty();
        page.Text.Split('\n')[page.CursorRow].Should().NotBeNullOrWhiteSpace();
    }

    [Theory]
    [InlineData(50, 15)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(30, 8)]
    public void A_page_always_says_whose_turn_it_is_and_how_the_other_stands(int columns, int rows)
    {
        foreach (var pair in new[] { Working(), Working().Lift(), Working().Lift().RestOut().Lift() }.Select(p => p.Wait(6)))
        {
            var text = Drawn(pair, columns, rows).Text;
            text.Should().Contain(pair.Both.Name(1 - pair.Both.Turn), "the other is named");
            text.Should().MatchRegex(rows < 14 ? pair.Both.Name(pair.Both.Turn).ToUpperInvariant() : "███ ");
        }
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(10, 3)]
    [InlineData(20, 5)]
    public void No_page_throws_on_a_window_that_is_being_squeezed(int columns, int rows)
    {
        foreach (var at in ByName.Values)
        {
            var draw = () => Drawn(at(), columns, rows);
            draw.Should().NotThrow();
        }
    }

    [Fact]
    public void A_name_with_a_letter_that_has_no_shape_is_written_plainly() =>
        BigLetters.Scale("Zoë", 80, 10).Should().Be((0, 0));

    private static Page Drawn(Pair pair, int columns, int rows) => SharedPages.Draw(pair.Both, null, new PageSize(columns, rows), pair.Now);

    private static Pair Working() => Pair.Strength().Check().To(b => b.Both.All(s => s.Place.Current is WorkItem { Slot: "squat" })).RestOut();
}
