using RackSide.Training.Exercises;
using RackSide.Training.Measures;
using RackSide.Training.Planning;

namespace RackSide.Pages.Rack;

/// <summary>A set the lifter knows from elsewhere, told before the first session of an exercise: its load, then its reps.</summary>
/// <param name="exercise">The exercise.</param>
/// <param name="unit">The unit loads are told in here.</param>
public sealed class KnownSetConversation(Exercise exercise, MassUnit unit) : StillConversation
{
    private const string NothingTyped = "Nothing is typed yet; / goes back.", NoNumber = "That is no number; write one such as 62.5.";

    private Mass? load;
    private string typed = "";
    private bool ended;

    /// <summary>The exercise.</summary>
    public Exercise Exercise => exercise;

    /// <summary>The set as told; null where nothing is to be kept.</summary>
    public (Mass Load, int Reps)? Told { get; private set; }

    /// <inheritdoc/>
    public override bool Ended => ended;

    /// <inheritdoc/>
    protected override Page Draw(PageSize size, string? said) => new EntryPage("A SET YOU KNOW", Question, typed, EntryPage.NumberRoom)
    {
        Place = size.Compact ? exercise.ShortName.ToLowerInvariant() : exercise.Name,
        Unit = load is null ? unit.Symbol() : "reps",
        Below = "From the last weeks only, with every rep honest. You begin below it, with reps to spare; nobody should lift to the limit to find out.",
        Said = said,
        Hints = [new("ENTER", load is null ? "go on" : "keep it"), new("0-9 .", "type"), new("/", load is null ? "back, nothing kept" : "back to the load", "back"), new("!", "stop signs")],
    }.Draw(size);

    /// <inheritdoc/>
    protected override string? Answer(KeyPress key) => key.IsAccept() ? Accept() : key.IsBack() ? Back() : Type(key);

    private string Question => load is { } mass
        ? $"{mass} for how many reps?"
        : $"{exercise.Name}: a set you did lately. How heavy{(exercise.LoadType == LoadType.Barbell ? ", the bar counted" : "")}?";

    private string? Accept() => NumberEntry.Parse(typed) is not { } number ? (typed.Length == 0 ? NothingTyped : NoNumber)
        : load is { } mass ? Keep(mass, number)
        : Take(new Mass(number, unit));

    private string? Take(Mass mass)
    {
        if (KnownSets.RefusalOf(mass) is { } refusal)
        {
            return refusal;
        }

        (load, typed) = (mass, "");
        return null;
    }

    private string? Keep(Mass mass, decimal reps)
    {
        if (KnownSets.Refusal(mass, reps) is { } refusal)
        {
            return refusal;
        }

        (Told, ended) = ((mass, (int)reps), true);
        return null;
    }

    private string? Back()
    {
        ended = load is null;
        (typed, load) = (load?.Number ?? "", null);
        return null;
    }

    private string? Type(KeyPress key)
    {
        var next = EntryPage.TypeNumber(typed, key);
        typed = next ?? typed;
        return next is null ? Notice.DeadKey : null;
    }
}
