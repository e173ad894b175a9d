using CsCheck;
using RackSide.Files;
using RackSide.Pages;
using RackSide.Pages.Settings;

namespace RackSide.Tests.Files;

public class ScreenFileTests
{
    private const string Gym = """
        # Our own words.
        unit: kg
        training_days: [monday]
        bars:
          - name: bar
            mass: 20 kg
        plates: {}
        keys:
          # the left hand
          undo: [r]
        sound: on   # loud
        # the end
        """;

    private static readonly char[] Free = ['b', 'c', 'e', 'f', 'g', 'i', 'j', 'k', 'l', 'n', 'o', 'r', 't', 'v', 'y', '#', '"', '\'', '\\', ';', '&', '[', ':', '%', '@', '~'];

    private static readonly Gen<RackSettings> Wishes =
        from tint in Gen.Enum<Tint>()
        from signs in Gen.Int[0, 2]
        from switches in Gen.Bool.Array[3]
        from keys in Gen.Shuffle(Free, 0, 6)
        from verbs in Gen.Shuffle(KeyLayout.Verbs.ToArray(), keys.Length)
        let changed = verbs.Zip(keys).ToDictionary(p => p.First, p => (IReadOnlyList<KeyPress>)[KeyPress.Of(p.Second)])
        select new RackSettings(
            new ScreenSettings { Tint = tint, SevenBit = signs switch { 0 => null, 1 => true, _ => false }, Big = switches[0], Flash = switches[1], Keys = new KeyLayout(changed) },
            switches[2]);

    [Fact]
    public void What_the_settings_page_keeps_reads_back_and_no_other_line_is_touched() => Wishes.Sample(wish =>
    {
        var text = ScreenText.Into(Gym, wish.Screen, wish.Sound);
        var rules = GymFile.Read(text, "gym.yaml").OrThrow();

        rules.Sound.Should().Be(wish.Sound);
        rules.Screen.Should().BeEquivalentTo(wish.Screen);
        text.Should().StartWith("# Our own words.\nunit: kg\ntraining_days: [monday]\nbars:\n  - name: bar\n    mass: 20 kg\nplates: {}\n").And.Contain("\n# the end\n");
        ScreenText.Into(text, wish.Screen, wish.Sound).Should().Be(text, "keeping the same again changes nothing");
    }, iter: 200);

    [Fact]
    public void The_alarms_program_is_taken_word_by_word()
    {
        var rules = GymFile.Read(Gym + "\nalarm_command: [aplay, -q, \"two words.wav\", \"$HOME;rm\"]\n", "gym.yaml").OrThrow();

        rules.AlarmCommand.Should().Equal("aplay", "-q", "two words.wav", "$HOME;rm");
        GymFile.Read(GymFile.Write(rules), "gym.yaml").OrThrow().AlarmCommand.Should().Equal(rules.AlarmCommand);
    }

    // POSIX, XBD 8.2: LC_ALL before the category before LANG. glibc names the character set after the dot.
    [Theory]
    [InlineData("LANG=C", true)]
    [InlineData("LANG=POSIX", true)]
    [InlineData("LANG=C.UTF-8", false)]
    [InlineData("LANG=de_DE.UTF-8", false)]
    [InlineData("LANG=de_DE.utf8", false)]
    [InlineData("LANG=de_DE", true)]
    [InlineData("LANG=de_DE@euro", true)]
    [InlineData("LC_ALL=C LANG=de_DE.UTF-8", true)]
    [InlineData("LC_CTYPE=en_GB.UTF-8 LANG=C", false)]
    [InlineData("", false)]
    public void Only_ASCII_is_drawn_where_the_locale_names_another_character_set(string variables, bool seven)
    {
        var set = variables.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(v => v.Split('=')).ToDictionary(v => v[0], v => v[1]);

        Locale.IsSevenBit(set.GetValueOrDefault).Should().Be(seven);
    }
}
