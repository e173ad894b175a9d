using System.Text.RegularExpressions;

namespace RackSide.House;

public partial class ClockTests
{
    [Fact]
    public void The_system_clock_is_named_in_one_place_at_most_and_that_is_the_program()
    {
        var namers = Namers(Repository.Sources("src"));
        namers.Should().HaveCountLessThanOrEqualTo(1);
        namers.Where(file => !file.StartsWith("src/RackSide/", StringComparison.Ordinal)).Should().BeEmpty();
    }

    [Fact]
    public void A_second_place_is_found() =>
        Namers([new("a.cs", "var c = SystemClock.Instance;"), new("b.cs", "// SystemClock.Instance"), new("c.cs", "_ = NodaTime.SystemClock\n.Instance;")])
            .Should().Equal("a.cs", "c.cs");

    private static List<string> Namers(IEnumerable<Source> sources) =>
        [.. sources.Where(s => SystemClockNamed().IsMatch(s.Code)).Select(s => s.File)];

    [GeneratedRegex(@"\bSystemClock\s*\.\s*Instance\b")]
    private static partial Regex SystemClockNamed();
}
