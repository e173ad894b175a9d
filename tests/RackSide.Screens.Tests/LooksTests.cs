using System.Globalization;
using RackSide.Pages;
using RackSide.Pages.Settings;
using Terminal.Gui.Drivers;

namespace RackSide.Screens.Tests;

/// <summary>What can be read, on the palettes terminals usually have, by whatever wish.</summary>
public sealed class LooksTests
{
    private const int OwnInk = 7, Black = 0;

    // Ground, then the sixteen colours that the codes can name: the Linux console, xterm, Windows (Campbell), Tango,
    // Solarized dark. From memory; screens of these palettes were measured for this project's standards, and agree.
    private static readonly Dictionary<string, (string Ground, string[] Colours)> Palettes = new()
    {
        ["linux"] = ("000000", ["000000", "aa0000", "00aa00", "aa5500", "0000aa", "aa00aa", "00aaaa", "aaaaaa", "555555", "ff5555", "55ff55", "ffff55", "5555ff", "ff55ff", "55ffff", "ffffff"]),
        ["xterm"] = ("000000", ["000000", "cd0000", "00cd00", "cdcd00", "0000ee", "cd00cd", "00cdcd", "e5e5e5", "7f7f7f", "ff0000", "00ff00", "ffff00", "5c5cff", "ff00ff", "00ffff", "ffffff"]),
        ["windows"] = ("0c0c0c", ["0c0c0c", "c50f1f", "13a10e", "c19c00", "0037da", "881798", "3a96dd", "cccccc", "767676", "e74856", "16c60c", "f9f1a5", "3b78ff", "b4009e", "61d6d6", "f2f2f2"]),
        ["tango"] = ("2e3436", ["2e3436", "cc0000", "4e9a06", "c4a000", "3465a4", "75507b", "06989a", "d3d7cf", "555753", "ef2929", "8ae234", "fce94f", "729fcf", "ad7fa8", "34e2e2", "eeeeec"]),
        ["solarized"] = ("002b36", ["073642", "dc322f", "859900", "b58900", "268bd2", "d33682", "2aa198", "eee8d5", "002b36", "cb4b16", "586e75", "657b83", "839496", "6c71c4", "93a1a1", "fdf6e3"]),
    };

    public static TheoryData<string, Tint> Everywhere
    {
        get
        {
            var data = new TheoryData<string, Tint>();
            foreach (var palette in Palettes.Keys)
            {
                foreach (var tint in Enum.GetValues<Tint>())
                {
                    data.Add(palette, tint);
                }
            }

            return data;
        }
    }

    // WCAG 2.2: 7 to 1 is enhanced contrast for text (1.4.6), 3 to 1 the least for what is no text (1.4.11).
    // Standard S15 of docs/screen.md.
    [Theory]
    [MemberData(nameof(Everywhere))]
    public void Digits_and_words_stand_at_7_to_1_and_bars_at_3_to_1(string palette, Tint tint)
    {
        foreach (var look in Enumerable.Range(0, 16).Select(bits => (Look)bits))
        {
            Contrast(palette, tint, new Cell('5', look)).Should().BeGreaterThanOrEqualTo(7, $"a digit, {look}");
            Contrast(palette, tint, new Cell('█', look)).Should().BeGreaterThanOrEqualTo(3, $"a block, {look}");
        }
    }

    [Fact]
    public void The_reckoning_is_that_of_WCAG()
    {
        Ratio("000000", "ffffff").Should().BeApproximately(21, 0.001);
        Ratio("767676", "ffffff").Should().BeApproximately(4.54, 0.005, "the well-known least grey on white");
        Contrast("solarized", Tint.Hues, new Cell('█', Look.Now)).Should().BeLessThan(4.5, "or yellow could be used for words");
    }

    // Standard S18 of docs/screen.md.
    [Fact]
    public void Seven_bits_are_enough_where_they_are_asked_for()
    {
        using var screen = new Headless(new Scripted(), options: new ScreenOptions { Appearance = () => new Appearance { SevenBit = true } });

        screen.Text.Should().Contain("SCRIPTED").And.EndWith("####\n");
        screen.Text.Should().MatchRegex("^[ -~\n]*$");
    }

    [Fact]
    public void A_wish_that_changes_repaints_the_screen_as_it_is_now_wished()
    {
        var wished = new Appearance();
        using var screen = new Headless(new Scripted(), options: new ScreenOptions { Appearance = () => wished });

        wished = wished with { SevenBit = true };
        screen.Advance(TimeSpan.FromMilliseconds(200));

        screen.Text.Should().EndWith("####\n");
    }

    [Fact]
    public void High_contrast_paints_every_cell_and_gives_way_to_no_colour()
    {
        var buffer = new OutputBufferImpl();
        buffer.SetSize(4, 1);
        var page = new Canvas(new PageSize(4, 1)).Done();
        var wished = new Appearance { Tint = Tint.Contrast };

        new PageBrush(() => wished).Paint(page, buffer).Should().Contain("\e[0;97;40m    ");
        new ScreenOptions { Appearance = () => wished, Colour = false }.Shown().Tint.Should().Be(Tint.Grey);
    }

    private static double Contrast(string palette, Tint tint, Cell cell)
    {
        var (ground, colours) = Palettes[palette];
        var codes = new Inks(tint).Code(cell.Shown()).Trim('\e', '[', 'm').Split(';').Select(c => int.Parse(c, CultureInfo.InvariantCulture)).ToList();
        var ink = codes.Find(c => c is >= 90 and <= 97) is var bright and > 0 ? colours[bright - 90 + 8] : colours[OwnInk];
        return Ratio(ink, codes.Contains(40) ? colours[Black] : ground);
    }

    // WCAG 2.2, "contrast ratio" and "relative luminance".
    private static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        var linear = Enumerable.Range(0, 3)
            .Select(i => int.Parse(colour.AsSpan(2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToList();
        return (0.2126 * linear[0]) + (0.7152 * linear[1]) + (0.0722 * linear[2]);
    }
}
