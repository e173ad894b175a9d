using RackSide.Training.Kit;

namespace RackSide.Pages.Kits;

/// <summary>
/// What this gym owns, changed from the numeric pad. Nothing is written before the lifter says so; then it ends, and
/// whoever opened it writes <see cref="Kit"/>, or opens it again with what stood in the way.
/// </summary>
public sealed class KitConversation : StillConversation
{
    private readonly Stack<Sheet> sheets = new();
    private readonly string? trouble;
    private readonly GymKit saved;
    private bool ended;

    /// <summary>Opens the kit.</summary>
    /// <param name="before">As it is written.</param>
    /// <param name="draft">As it was changed already; null where it was not.</param>
    /// <param name="trouble">Why it could not be written; null where nobody tried.</param>
    public KitConversation(GymKit before, GymKit? draft = null, string? trouble = null)
    {
        (Before, Kit, saved, this.trouble) = (before, draft ?? before, draft is null ? before : before with { }, trouble);
        sheets.Push(Menu());
    }

    /// <summary>The kit as it was written when this began.</summary>
    public GymKit Before { get; }

    /// <summary>The kit as it stands now.</summary>
    public GymKit Kit { get; private set; }

    /// <summary>Whether it is to be written.</summary>
    public bool Write { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => ended;

    private bool Changed => !ReferenceEquals(Kit, saved);

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => (sheets.Peek().View(Kit) with { Said = said, Place = Changed ? "not written yet" : "" }).Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key)
    {
        if (key.IsBack())
        {
            return Back();
        }

        var turn = sheets.Peek().Press(Kit, key);
        Kit = turn.Kit;
        for (var i = 0; i < turn.Close && sheets.Count > 1; i++)
        {
            sheets.Pop();
        }

        if (turn.Open is { } sheet)
        {
            sheets.Push(sheet);
        }

        return turn.Said;
    }

    private string? Back()
    {
        if (sheets.Count > 1)
        {
            sheets.Pop();
        }
        else if (Changed)
        {
            sheets.Push(Leaving());
        }
        else
        {
            ended = true;
        }

        return null;
    }

    private MenuSheet Menu() => new("THIS GYM'S KIT", _ => trouble is null ? [] : [trouble], kit =>
    [
        new("bars", string.Join(", ", kit.Bars.Select(b => $"{b.Name} {b.Bare}")), now => SheetTurn.To(now, BarSheets.All())),
        new("plates", KitWords.Of(kit.Plates), now => SheetTurn.To(now, new PlateSheet("KIT  plates", k => k.Plates, (k, p) => k with { Plates = p }))),
        new("dumbbells", KitWords.Span(kit.Dumbbells), now => SheetTurn.To(now, new Masses("KIT  dumbbells, in pairs", k => k.Dumbbells, (k, m) => k with { Dumbbells = m }).Sheet())),
        new("handles", kit.Handles.Count == 0 ? "none" : string.Join(", ", kit.Handles.Select(h => $"{h.Count} of {h.Bar.Mass}")), now => SheetTurn.To(now, OtherSheets.Handles())),
        new("machines", string.Join("; ", kit.Machines.Select(m => m.Name).Prepend($"stack {KitWords.Span(kit.Stack)}")), now => SheetTurn.To(now, OtherSheets.Machines())),
        new("bands", kit.Bands.Count == 0 ? kit.Equipment.Contains("band") ? "not named" : "none" : string.Join(", ", kit.Bands.Select(b => b.Name)), now => SheetTurn.To(now, OtherSheets.Bands())),
        new("belt", kit.Belt switch { null => "none", { Mass: { } mass } => mass.ToString(), _ => "yes" }, now => SheetTurn.To(now, OtherSheets.Belt())),
        new("other things", "", now => SheetTurn.To(now, OtherSheets.Things(now))),
        new(Changed ? "write it and leave" : "leave", "", now => Leave(now, Changed)),
    ]);

    private MenuSheet Leaving() => new("THIS GYM'S KIT", _ => ["The kit is changed and not written yet."], _ =>
    [
        new("write it", "", now => Leave(now, write: true)),
        new("go on changing it", "", now => SheetTurn.Done(now)),
        new("drop the changes", "", now => Leave(now, write: false)),
    ]);

    private SheetTurn Leave(GymKit kit, bool write)
    {
        (Write, ended) = (write, true);
        return new(kit);
    }
}
