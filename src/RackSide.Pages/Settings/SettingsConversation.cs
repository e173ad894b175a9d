using System.Collections.Immutable;

namespace RackSide.Pages.Settings;

/// <summary>
/// The settings of the screen, the sound and the keys. Each change is kept at once and seen at once; there is nothing to
/// confirm, because the same key changes it back.
/// </summary>
/// <param name="settings">As they are.</param>
/// <param name="keep">Keeps changed ones; gives a sentence where that failed, else null.</param>
public sealed class SettingsConversation(RackSettings settings, Func<RackSettings, string?> keep) : StillConversation
{
    private const int Lines = 7;
    private RackSettings now = settings;
    private bool ended;
    private int chosen;
    private int? verb;
    private bool waiting;

    /// <inheritdoc/>
    public override bool Ended => ended;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) =>
        ((verb, waiting) switch
        {
            (null, _) => All(),
            ({ } line, false) => KeysPage.All(now.Screen.Keys, line),
            ({ } line, true) => KeysPage.Waiting(now.Screen.Keys, KeyLayout.Verbs[line]),
        } with
        { Said = said }).Draw(size);

    /// <inheritdoc/>
    protected override bool Types(KeyPress key) => waiting;

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => (verb, waiting) switch
    {
        (null, _) => OnAll(key),
        ({ } line, false) => OnKeys(key, line),
        ({ } line, true) => OnWaiting(key, KeyLayout.Verbs[line]),
    };

    private BodyPage All() => new ListPage(
        "SETTINGS",
        [
            new("colour", Value: now.Screen.Tint switch { Tint.Hues => "two hues", Tint.Grey => "none", _ => "high contrast" }),
            new("signs", Value: now.Screen.SevenBit switch { null => "by the locale", true => "ASCII", false => "blocks" }),
            new("page", Value: now.Screen.Big ? "large digits only" : "whole"),
            new("bell", Value: now.Sound ? "on" : "off"),
            new("flash when a rest is over", Value: now.Screen.Flash ? "on" : "off, the bar stands"),
            new("keys", Value: now.Screen.Keys.Changed.Count == 0 ? "as they come" : $"changed: {now.Screen.Keys.Changed.Count}"),
            new("back"),
        ],
        chosen)
    {
        Hints = [new("ENTER", "change"), new($"1-{Lines}", "at once"), new("+ -", "up, down"), new("/", "back"), new("!", "stop signs")],
    };

    private string? OnAll(KeyPress key)
    {
        if (key.IsBack())
        {
            ended = true;
            return null;
        }

        var line = key.IsAccept() ? chosen : ListPage.Move(key, chosen, Lines);
        chosen = line ?? chosen;
        return line is null ? Notice.DeadKey : key.IsAccept() || key.Digit() is not null ? Change(chosen) : null;
    }

    private string? Change(int line)
    {
        var screen = now.Screen;
        switch (line)
        {
            case 0: return Keep(now with { Screen = screen with { Tint = (Tint)(((int)screen.Tint + 1) % 3) } });
            case 1: return Keep(now with { Screen = screen with { SevenBit = screen.SevenBit switch { null => true, true => false, false => null } } });
            case 2: return Keep(now with { Screen = screen with { Big = !screen.Big } });
            case 3: return Keep(now with { Sound = !now.Sound });
            case 4: return Keep(now with { Screen = screen with { Flash = !screen.Flash } });
            case 5: verb = 0; return null;
            default: ended = true; return null;
        }
    }

    private string? OnKeys(KeyPress key, int line)
    {
        if (key.IsBack())
        {
            verb = null;
            return null;
        }

        waiting = key.IsAccept();
        var next = waiting || key.Digit() is not null ? null : ListPage.Move(key, line, KeyLayout.Verbs.Count);
        verb = next ?? line;
        return waiting || next is not null ? null : Notice.DeadKey;
    }

    private string? OnWaiting(KeyPress key, Verb given)
    {
        if (key.IsBack() || key.Code == KeyCode.Enter)
        {
            waiting = false;
            return null;
        }

        var changed = now.Screen.Keys.Changed.ToImmutableDictionary();
        changed = key == KeyPress.Of('*') ? changed.Remove(given) : changed.SetItem(given, [KeyNames.Folded(key)]);
        if (KeyLayout.Clash(changed) is { } clash)
        {
            return $"{char.ToUpperInvariant(clash[0])}{clash[1..]}.";
        }

        waiting = false;
        return Keep(now with { Screen = now.Screen with { Keys = new KeyLayout(changed) } });
    }

    private string? Keep(RackSettings wished)
    {
        if (keep(wished) is { } trouble)
        {
            return trouble;
        }

        now = wished;
        return "Kept.";
    }
}
