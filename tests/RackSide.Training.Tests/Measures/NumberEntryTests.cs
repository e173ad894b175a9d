using System.Globalization;
using RackSide.Training.Measures;

namespace RackSide.Training.Tests.Measures;

public class NumberEntryTests
{
    // Standard S22 of docs/screen.md.
    [Theory]
    [InlineData("62.5", "62.5")]
    [InlineData("62,5", "62.5")]
    [InlineData(" 62.5 ", "62.5")]
    [InlineData("60", "60")]
    [InlineData(".5", "0.5")]
    [InlineData("5,", "5")]
    [InlineData("1,000", "1")]
    [InlineData("0.125", "0.125")]
    public void A_number_means_the_same_whatever_the_culture(string typed, string number)
    {
        foreach (var (mark, group) in new[] { (".", ","), (",", "."), (",", "\u00a0"), ("\u066b", "\u066c") })
        {
            ReadUnder(mark, group, typed).Should().Be(decimal.Parse(number, CultureInfo.InvariantCulture));
        }
    }

    // Standard S22 of docs/screen.md.
    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData(".")]
    [InlineData("6.2.5")]
    [InlineData("1.000,5")]
    [InlineData("1e3")]
    [InlineData("-5")]
    [InlineData("+5")]
    [InlineData("6 0")]
    [InlineData("60kg")]
    [InlineData("0x1F")]
    [InlineData("1/2")]
    [InlineData("٦٠")]
    [InlineData("60.1234")]
    [InlineData("1234567890")]
    public void What_is_not_plainly_a_number_is_none(string? typed) => NumberEntry.Parse(typed).Should().BeNull();

    /// <summary>Reads under a culture with these marks; made by hand because the tests run without the machine's cultures.</summary>
    private static decimal? ReadUnder(string mark, string group, string typed)
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = mark;
        culture.NumberFormat.NumberGroupSeparator = group;
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = culture;
        try
        {
            return NumberEntry.Parse(typed);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
