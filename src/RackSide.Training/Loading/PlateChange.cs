using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Training.Loading;

/// <summary>What to change on the bar, for each side. Plates come off and go on only at the outside.</summary>
/// <param name="TakeOff">The plates to take off, in that order: the outermost first.</param>
/// <param name="PutOn">The plates to put on, in that order: the innermost first.</param>
public sealed record PlateChange(IReadOnlyList<Mass> TakeOff, IReadOnlyList<Mass> PutOn)
{
    /// <summary>The bar to take instead, after the plates are off; null where the bar stays.</summary>
    public Bar? OtherBar { get; init; }

    /// <summary>Whether the bar is stripped because it goes to another place, and loaded again there.</summary>
    public bool Moves { get; init; }

    /// <summary>Whether the words name each plate's unit, because plates of both units are about.</summary>
    public bool NamesUnits { get; init; }

    /// <summary>Whether there is nothing to change.</summary>
    public bool IsNone => TakeOff.Count == 0 && PutOn.Count == 0 && OtherBar is null;

    /// <summary>The change that makes one loaded bar of another.</summary>
    /// <param name="from">What is on the bar now; null where it is empty.</param>
    /// <param name="to">What the next set needs.</param>
    public static PlateChange Between(BarStack? from, BarStack to)
    {
        var now = from ?? new(to.Bar, []);
        var moves = now.Bar == to.Bar && now.Side.Count > 0 && !BarPlaces.StaysLoaded(now, to.Place);
        var stays = now.Bar == to.Bar && !moves ? now.Side.Zip(to.Side).TakeWhile(p => p.First == p.Second).Count() : 0;
        return new([.. now.Side.Skip(stays).Reverse()], [.. to.Side.Skip(stays)])
        {
            OtherBar = now.Bar == to.Bar ? null : to.Bar,
            Moves = moves,
            NamesUnits = MassSum.Mixed([to.Bar.Mass, .. now.Side, .. to.Side]),
        };
    }

    /// <summary>The change in words: <c>take off 5, put on 10 + 2.5, each side</c>.</summary>
    public string Text => (TakeOff, PutOn, OtherBar) switch
    {
        (_, [], null) when Moves => $"take off {Words(TakeOff)} each side, move the bar",
        (_, _, null) when Moves => $"take off {Words(TakeOff)} each side, move the bar, put on {Words(PutOn)} each side",
        ([], [], null) => "same plates, nothing to change",
        ([], _, null) => $"put on {Words(PutOn)} each side",
        (_, [], null) => $"take off {Words(TakeOff)} each side",
        (_, _, null) => $"take off {Words(TakeOff)}, put on {Words(PutOn)}, each side",
        ([], [], _) => $"take {OtherBar.Name}",
        ([], _, _) => $"take {OtherBar.Name}, put on {Words(PutOn)} each side",
        (_, [], _) => $"take off {Words(TakeOff)} each side, take {OtherBar.Name}",
        _ => $"take off {Words(TakeOff)} each side, take {OtherBar.Name}, put on {Words(PutOn)} each side",
    };

    private string Words(IReadOnlyList<Mass> plates) => LoadWords.Plates(plates, NamesUnits);
}
