using RackSide.Pages.Settings;

namespace RackSide.Pages.Tests.Settings;

public class KeyLayoutTests
{
    [Theory]
    [InlineData("u", "u")]
    [InlineData("ENTER", "ENTER")]
    [InlineData("#", "#")]
    public void As_they_come_keys_mean_themselves(string key, string meant) =>
        KeyLayout.Default.Meant(One(key)).Should().Be(One(meant));

    [Theory]
    [InlineData("r", "BACK", "given to undo")]
    [InlineData("R", "BACK", "capitals are the same keys")]
    [InlineData("ENTER", "ENTER", "the pad stays")]
    [InlineData(".", ".", "the pad's undo stays too")]
    [InlineData("q", "q", "another verb's keys stay")]
    public void A_key_given_to_a_verb_means_its_first_usual_one(string key, string meant, string why) =>
        Undo(KeyPress.Of('r')).Meant(One(key)).Should().Be(One(meant), why);

    [Theory]
    [InlineData("u")]
    [InlineData("z")]
    [InlineData("BACK")]
    public void A_key_taken_from_its_verb_means_nothing(string key) =>
        KeyTable.VerbOf(Undo(KeyPress.Of('r')).Meant(One(key))).Should().BeNull();

    [Fact]
    public void Every_verb_that_can_be_changed_is_reached_by_its_new_key()
    {
        foreach (var verb in KeyLayout.Verbs)
        {
            var layout = new KeyLayout(Changed((verb, [KeyPress.Of('k')])));

            KeyTable.VerbOf(layout.Meant(KeyPress.Of('k'))).Should().Be(verb);
        }
    }

    [Theory]
    [InlineData('5', "5 keeps its meaning; take another key for undo")]
    [InlineData('!', "! keeps its meaning; take another key for undo")]
    [InlineData('q', "q would mean both undo and leave; take it from one of them")]
    public void A_clash_is_told_in_a_sentence(char key, string sentence) =>
        KeyLayout.Clash(Changed((Verb.Undo, [KeyPress.Of(key)]))).Should().Be(sentence);

    [Fact]
    public void A_key_can_move_from_one_verb_to_another_where_both_are_told() =>
        KeyLayout.Clash(Changed((Verb.Undo, [KeyPress.Of('q')]), (Verb.Leave, []))).Should().BeNull();

    [Fact]
    public void Each_key_has_a_name_that_leads_back_to_it() =>
        KeyTable.Rows.SelectMany(r => r.Presses).Should().OnlyContain(k => KeyNames.Find(KeyNames.Of(k)) == k);

    private static KeyLayout Undo(params KeyPress[] keys) => new(Changed((Verb.Undo, keys)));

    private static Dictionary<Verb, IReadOnlyList<KeyPress>> Changed(params (Verb Verb, IReadOnlyList<KeyPress> Keys)[] changes) =>
        changes.ToDictionary(c => c.Verb, c => c.Keys);

    private static KeyPress One(string key) => Keys.Parse(key).Single();
}
