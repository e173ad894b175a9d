namespace RackSide.Pages.Tests;

public class SevenBitTests
{
    [Theory]
    [InlineData('█', '#')]
    [InlineData('─', '-')]
    [InlineData('┤', '+')]
    [InlineData('é', 'e')]
    [InlineData('Ł', 'L')]
    [InlineData('ß', 's')]
    [InlineData('語', '?')]
    [InlineData('x', 'x')]
    public void A_glyph_has_a_stand_in(char glyph, char plain) => SevenBit.Of(glyph).Should().Be(plain);

    [Fact]
    public void Whatever_the_glyph_it_is_printable_ASCII() =>
        Enumerable.Range(0, 0x10000).Select(code => SevenBit.Of((char)code)).Should().OnlyContain(c => c >= ' ' && c <= '~');
}
