using System.Text.RegularExpressions;

namespace RackSide.House;

public partial class ClockTests
{
    [Fact]
    public void The_system_clock_is_named_in_one_place_and_that_is_the_program() =>
        Namers(Repository.Sources("src")).Should().ContainSingle().Which.Should().StartWith("src/RackSide/");

    [Fact]
    public void A_second_place_is_found() =>
        Namers([new("a.cs", "var c = SystemClock.Instance;"), new("b.cs", "// SystemClock.Instance"), new("c.cs", "_ = NodaTime.SystemClock\n.Instance;")])
            .Should().Equal("a.cs", "c.cs");

    private static List<string> Namers(IEnumerable<Source> sources) =>
        [.. sources.Where(s => SystemClockNamed().IsMatch(s.Code)).Select(s => s.File)];

    [GeneratedRegex(@"\bSystemClock\s*\.\s*Instance\b")]
    private static partial Regex SystemClockNamed();
}
