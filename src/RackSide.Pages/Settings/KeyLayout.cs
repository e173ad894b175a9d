namespace RackSide.Pages.Settings;

/// <summary>
/// Which keys mean what at this gym. The keys of the numeric pad, Esc and ! stay where they are, because pages name them,
/// and because a gym's settings must lock nobody out; all others can be given to another verb, or taken away.
/// </summary>
public sealed class KeyLayout
{
    private const string Pad = "0123456789+-*/.!";

    private static readonly HashSet<KeyPress> FixedKeys =
    [
        KeyPress.Enter, KeyPress.Escape, new(KeyCode.Up), new(KeyCode.Down), new(KeyCode.Insert), new(KeyCode.Delete), .. Pad.Select(KeyPress.Of),
    ];

    private readonly Dictionary<Verb, IReadOnlyList<KeyPress>> others;
    private readonly Dictionary<KeyPress, Verb> byKey;

    /// <summary>A layout.</summary>
    /// <param name="changed">The verbs whose other keys are changed, with those keys.</param>
    /// <exception cref="ArgumentException">There is a <see cref="Clash"/> in it.</exception>
    public KeyLayout(IReadOnlyDictionary<Verb, IReadOnlyList<KeyPress>> changed)
    {
        if (Clash(changed) is { } clash)
        {
            throw new ArgumentException(clash, nameof(changed));
        }

        Changed = changed;
        others = Verbs.ToDictionary(v => v, v => changed.GetValueOrDefault(v) ?? Usual(v));
        byKey = others.SelectMany(o => o.Value.Select(k => (k, o.Key))).ToDictionary(p => p.k, p => p.Key);
    }

    /// <summary>The verbs whose keys can be changed, in the order of the key table.</summary>
    public static IReadOnlyList<Verb> Verbs { get; } = [.. KeyTable.Rows.Select(r => r.Verb).Where(v => v is not Verb.Back)];

    /// <summary>The keys as they come.</summary>
    public static KeyLayout Default { get; } = new(new Dictionary<Verb, IReadOnlyList<KeyPress>>());

    /// <summary>What is changed.</summary>
    public IReadOnlyDictionary<Verb, IReadOnlyList<KeyPress>> Changed { get; }

    /// <summary>The word of a verb in the settings: <c>accept</c>, <c>stop_signs</c>.</summary>
    public static string WordOf(Verb verb) => verb switch
    {
        Verb.Digit => "hold",
        Verb.Other => "other",
        Verb.StopSigns => "stop_signs",
        Verb.LookBack => "look_back",
        Verb.LookAhead => "look_ahead",
        _ => verb.ToString().ToLowerInvariant(),
    };

    /// <summary>The keys of a verb beside its fixed ones.</summary>
    public IReadOnlyList<KeyPress> Others(Verb verb) => others[verb];

    /// <summary>Why these changes cannot be, in a sentence; null where they can.</summary>
    public static string? Clash(IReadOnlyDictionary<Verb, IReadOnlyList<KeyPress>> changed)
    {
        var taken = new Dictionary<KeyPress, Verb>();
        foreach (var (verb, key) in Verbs.SelectMany(v => (changed.GetValueOrDefault(v) ?? Usual(v)).Select(k => (v, k))))
        {
            if (FixedKeys.Contains(key) && changed.ContainsKey(verb))
            {
                return $"{KeyNames.Of(key)} keeps its meaning; take another key for {WordOf(verb)}";
            }

            if (!taken.TryAdd(key, verb))
            {
                return $"{KeyNames.Of(key)} would mean both {WordOf(taken[key])} and {WordOf(verb)}; take it from one of them";
            }
        }

        return null;
    }

    /// <summary>
    /// The key that pages know for a key of this gym: itself where it stayed, the first usual one of its verb where it was
    /// given to one, and one that means nothing where it was taken from its verb.
    /// </summary>
    public KeyPress Meant(KeyPress key)
    {
        if (Changed.Count == 0 || FixedKeys.Contains(key))
        {
            return key;
        }

        var usual = KeyTable.VerbOf(key);
        return byKey.TryGetValue(KeyNames.Folded(key), out var verb)
            ? verb == usual ? key : KeyTable.Rows.Single(r => r.Verb == verb).Presses[0]
            : usual is null ? key : Nothing;
    }

    private static KeyPress Nothing { get; } = KeyPress.Of('\0');

    /// <summary>The keys of a verb as they come, beside its fixed ones.</summary>
    public static IReadOnlyList<KeyPress> Usual(Verb verb) => [.. KeyTable.Rows.Single(r => r.Verb == verb).Presses.Where(p => !FixedKeys.Contains(p))];
}
