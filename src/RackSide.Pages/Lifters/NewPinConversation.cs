using NodaTime;

namespace RackSide.Pages.Lifters;

/// <summary>A lifter chooses a PIN, typed twice, or none.</summary>
/// <param name="name">Whose.</param>
/// <param name="had">Whether there is one now, which ENTER alone would remove.</param>
public sealed class NewPinConversation(string name, bool had) : StillConversation
{
    private const string NotTheSame = "The two were not the same; begin again.";
    private const string FourDigits = "A PIN has four digits.";

    private string typed = "";
    private string? first;

    /// <inheritdoc/>
    public override bool Ended => Pin is not null || Left;

    /// <summary>The PIN chosen, empty for none; null until it is.</summary>
    public string? Pin { get; private set; }

    /// <summary>Whether the page was left with everything as it was.</summary>
    public bool Left { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new EntryPage($"NEW PIN  {name}", first is null ? "Four digits:" : "The same again:", new string('*', typed.Length), PinConversation.Digits)
    {
        Below = $"{PinConversation.Protects} Whoever looks after the board can remove one that is forgotten.",
        Hints = [new("0-9", "type"), new("ENTER", had ? "no PIN any more" : "no PIN", "no PIN"), new(".", "one digit back"), new("/", "back")],
        Said = said,
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        if (key.IsBack())
        {
            Left = true;
            return null;
        }

        if (key.Code == KeyCode.Enter)
        {
            Pin = typed.Length == 0 && first is null ? "" : null;
            return Pin is null ? FourDigits : null;
        }

        return PinTyping.Press(typed, key) is { } next ? Take(next) : Notice.DeadKey;
    }

    private string? Take(string next)
    {
        typed = next;
        if (typed.Length < PinConversation.Digits)
        {
            return null;
        }

        var same = first == typed;
        (var again, first, typed) = (first is not null, first is null ? typed : null, "");
        Pin = again && same ? next : null;
        return again && !same ? NotTheSame : null;
    }
}
