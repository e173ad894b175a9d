using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.Measures;
using RackSide.Training.Planning;

namespace RackSide.Pages.Rack;

/// <summary>A set the lifter knows from elsewhere, told before the first session of an exercise: its load, then its reps.</summary>
/// <param name="exercise">The exercise.</param>
/// <param name="unit">The unit loads are told in here.</param>
public sealed class KnownSetConversation(Exercise exercise, MassUnit unit) : IConversation
{
    private const string NothingTyped = "Nothing is typed yet; / goes back.", NoNumber = "That is no number; write one such as 62.5.";

    private Mass? load;
    private string typed = "";
    private int? stopSigns;
    private Notice notice;

    /// <summary>The exercise.</summary>
    public Exercise Exercise => exercise;

    /// <summary>The set as told; null where nothing is to be kept.</summary>
    public (Mass Load, int Reps)? Told { get; private set; }

    /// <inheritdoc/>
    public Action? Wake { get; set; }

    /// <inheritdoc/>
    public bool Ended { get; private set; }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => stopSigns is { } movedOn
        ? StopSignsPage.Draw(size, movedOn)
        : new EntryPage("A SET YOU KNOW", Question, typed, EntryPage.NumberRoom)
        {
            Place = size.Compact ? exercise.ShortName.ToLowerInvariant() : exercise.Name,
            Unit = load is null ? unit.Symbol() : "reps",
            Below = "From the last weeks only, with every rep honest. You begin below it, with reps to spare; nobody should lift to the limit to find out.",
            Said = notice.At(now),
            Hints = [new("ENTER", load is null ? "go on" : "keep it"), new("0-9 .", "type"), new("/", load is null ? "back, nothing kept" : "back to the load", "back"), new("!", "stop signs")],
        }.Draw(size);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        notice = Notice.Say(OnStopSigns(key) ? null : key.IsAccept() ? Accept() : key.IsBack() ? Back() : Type(key), now);
        return Bell.None;
    }

    /// <summary>Nothing passes with time here but a sentence, and that goes by itself.</summary>
    public Bell Tick(Instant now) => Bell.None;

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

        (Told, Ended) = ((mass, (int)reps), true);
        return null;
    }

    private string? Back()
    {
        Ended = load is null;
        (typed, load) = (load?.Number ?? "", null);
        return null;
    }

    private string? Type(KeyPress key)
    {
        var next = EntryPage.TypeNumber(typed, key);
        typed = next ?? typed;
        return next is null ? Notice.DeadKey : null;
    }

    private bool OnStopSigns(KeyPress key)
    {
        var open = stopSigns;
        stopSigns = open is { } movedOn ? StopSignsPage.Press(key, movedOn) : key.IsStopSigns() ? 0 : null;
        return open is not null || stopSigns is not null;
    }
}
