using NodaTime;

namespace RackSide.Pages.Lifters;

/// <summary>A lifter's PIN is asked for. The fourth digit checks it; what is typed is shown as stars.</summary>
/// <param name="name">Whose.</param>
/// <param name="matches">Whether these four digits are the PIN; it may take a second, and is meant to.</param>
/// <param name="brake">How far guessing is slowed already.</param>
public sealed class PinConversation(string name, Func<string, bool> matches, GuessBrake brake) : IConversation
{
    /// <summary>How many digits a PIN has.</summary>
    public const int Digits = 4;

    /// <summary>What a PIN is good for.</summary>
    public const string Protects = "A PIN protects from siblings, not from thieves.";

    private const string Wrong = "That is not the PIN.";

    private readonly Aside aside = new();
    private string typed = "";
    private Notice notice;

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended => Right || Left;

    /// <summary>Whether the PIN was given.</summary>
    public bool Right { get; private set; }

    /// <summary>Whether the page was left without it.</summary>
    public bool Left { get; private set; }

    /// <summary>How far guessing is slowed now; kept by whoever shows the page, or going away and coming back would let go of it.</summary>
    public GuessBrake Brake { get; private set; } = brake;

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => aside.Draw(size) ?? new EntryPage($"PIN  {name}", Question(now), new string('*', typed.Length), Digits)
    {
        Below = Protects,
        Hints = [new("0-9", "type"), new(".", "one digit back"), new("/", "back to the names", "back")],
        Said = notice.At(now),
    }.Draw(size);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        notice = Notice.Say(aside.Takes(key) ? null : Answer(key, now), now);
        return Bell.None;
    }

    /// <inheritdoc/>
    public Bell Tick(Instant now) => Bell.None;

    private string Question(Instant now)
    {
        var left = (int)Math.Ceiling(Brake.Left(now).TotalSeconds);
        return left > 0 ? $"Too many wrong PINs. The next one is taken in {left / 60}:{left % 60:00}." : $"PIN of {name}?";
    }

    private string? Answer(KeyPress key, Instant now)
    {
        if (key.IsBack())
        {
            Left = true;
            return null;
        }

        if (Brake.Left(now) > Duration.Zero)
        {
            return "Wait, or / goes back.";
        }

        return PinTyping.Press(typed, key) is { } next ? Take(next, now) : Notice.DeadKey;
    }

    private string? Take(string next, Instant now)
    {
        typed = next;
        if (typed.Length < Digits)
        {
            return null;
        }

        Right = matches(typed);
        typed = "";
        Brake = Right ? default : Brake.Missed(now);
        return Right ? null : Wrong;
    }
}

/// <summary>Typing the digits of a PIN.</summary>
internal static class PinTyping
{
    /// <summary>What is typed after a key; null where the key types nothing.</summary>
    public static string? Press(string typed, KeyPress key) => key switch
    {
        { Code: KeyCode.Backspace or KeyCode.Delete } or { Code: KeyCode.Character, Character: '.' or ',' } => typed.Length == 0 ? null : typed[..^1],
        _ when key.Digit() is { } digit && typed.Length < PinConversation.Digits => typed + digit,
        _ => null,
    };
}
