namespace RackSide.Pages.Lifters;

/// <summary>A lifter's name is changed.</summary>
/// <param name="name">The name so far.</param>
/// <param name="taken">The names of the others; no two are alike.</param>
public sealed class NameConversation(string name, IReadOnlyCollection<string> taken) : StillConversation
{
    private const string Empty = "A name has at least one letter.";
    private NameTyping typing = new(name);

    /// <inheritdoc/>
    public override bool Ended => Name is not null || Left;

    /// <summary>The name chosen; null until it is.</summary>
    public string? Name { get; private set; }

    /// <summary>Whether the page was left with the name as it was.</summary>
    public bool Left { get; private set; }

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new EntryPage("NAME", "What is the name?", typing.Text, NameTyping.Room)
    {
        TakesLetters = true,
        Below = "Letters type as they are; on the pad turn them.",
        Hints = [new("ENTER", "write it"), .. NameTyping.Hints, new("/", "back")],
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
            return Write(typing.Text.Trim());
        }

        if (typing.Press(key) is not var (next, said))
        {
            return Notice.DeadKey;
        }

        typing = next;
        return said;
    }

    private string? Write(string wanted)
    {
        var other = taken.FirstOrDefault(n => string.Equals(n, wanted, StringComparison.OrdinalIgnoreCase));
        Name = wanted.Length > 0 && other is null ? wanted : null;
        return Name is not null ? null : other is null ? Empty : $"{other} trains here already.";
    }
}
