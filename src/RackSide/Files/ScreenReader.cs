using RackSide.Pages;
using RackSide.Pages.Settings;

namespace RackSide.Files;

/// <summary>Reads what house rules settle about the screen, the alarm and the keys.</summary>
internal sealed class ScreenReader(Fields fields, MistakeList mistakes)
{
    private const string KeysName = "keys", AlarmName = "alarm_command";
    private const string KeysRight = "write a verb and its keys, such as undo: [u, backspace]";
    private const string AlarmRight = "write the program and its arguments as a list, such as [aplay, -q, bell.wav]";

    /// <summary>The words of a tint in a file and on the command line.</summary>
    public static Form<Tint> Tints { get; } =
        WordForm.Of("a look", ("hues", Tint.Hues), ("grey", Tint.Grey), ("contrast", Tint.Contrast));

    private static readonly Form<Glyphs> Signs =
        WordForm.Of("a kind of signs", ("auto", Glyphs.Auto), ("blocks", Glyphs.Blocks), ("ascii", Glyphs.Ascii));

    private enum Glyphs
    {
        Auto,
        Blocks,
        Ascii,
    }

    /// <summary>The screen.</summary>
    public ScreenSettings Read() => new()
    {
        Tint = fields.Optional("look", Tints) ?? Tint.Hues,
        SevenBit = fields.Optional("signs", Signs) switch { Glyphs.Blocks => false, Glyphs.Ascii => true, _ => null },
        Big = fields.Optional("big", YamlValues.Switch) ?? false,
        Flash = fields.Optional("flash", YamlValues.Switch) ?? true,
        Keys = Keys(),
    };

    /// <summary>The program that is run beside the bell, with its arguments; empty for none.</summary>
    public IReadOnlyList<string> Alarm()
    {
        var written = fields.OptionalList(AlarmName, AlarmRight) ?? [];
        if (written is [YamlScalar { Text: var alone }] && alone.Contains(' ', StringComparison.Ordinal))
        {
            mistakes.Add(fields.LineOf(AlarmName), AlarmName, $"\"{alone}\" is one word with blanks in it, and no shell takes it apart", AlarmRight);
        }

        foreach (var other in written.Where(v => v is not YamlScalar))
        {
            mistakes.Add(other.Line, AlarmName, $"{other.Kind} stands where a word should be", AlarmRight);
        }

        return [.. written.OfType<YamlScalar>().Select(v => v.Text)];
    }

    private KeyLayout Keys()
    {
        var changed = new Dictionary<Verb, IReadOnlyList<KeyPress>>();
        foreach (var field in fields.OptionalMap(KeysName, KeysRight)?.Fields ?? [])
        {
            if (VerbOf(field) is { } verb)
            {
                changed[verb] = KeysOf(field);
            }
        }

        if (KeyLayout.Clash(changed) is not { } clash)
        {
            return new KeyLayout(changed);
        }

        mistakes.Add(fields.LineOf(KeysName), KeysName, clash, "give each key to one verb");
        return KeyLayout.Default;
    }

    private Verb? VerbOf(YamlField field)
    {
        var words = KeyLayout.Verbs.ToDictionary(KeyLayout.WordOf);
        if (words.TryGetValue(field.Name, out var verb))
        {
            return verb;
        }

        mistakes.Add(field.Line, $"{KeysName}: {field.Name}", "there is no such verb",
            Nearest.To(field.Name, words.Keys) is { } meant ? $"did you mean {meant}?" : $"the verbs are {string.Join(", ", words.Keys)}");
        return null;
    }

    private List<KeyPress> KeysOf(YamlField field)
    {
        IReadOnlyList<YamlValue> written = field.Value switch { YamlList list => list.Items, YamlScalar { Text.Length: 0 } => [], var alone => [alone] };
        List<KeyPress> keys = [];
        foreach (var value in written)
        {
            if (value is YamlScalar { Text: var text } && KeyNames.Find(text) is { } key)
            {
                keys.Add(key);
            }
            else
            {
                mistakes.Add(value.Line, $"{KeysName}: {field.Name}", value is YamlScalar { Text: var name } ? $"there is no key \"{name}\"" : $"{value.Kind} stands where a key should be",
                    "write a character or a name such as space, tab, backspace, home, end, pgup or pgdn");
            }
        }

        return keys;
    }
}
