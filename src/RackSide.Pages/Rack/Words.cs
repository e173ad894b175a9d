using System.Globalization;
using NodaTime;
using RackSide.Training.History;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>The same thing said the same way on every page beside the rack.</summary>
public static class Words
{
    /// <summary>Minutes and seconds of what is left, rounded up so that 0:00 means over: <c>1:47</c>.</summary>
    public static string Clock(Duration left)
    {
        var seconds = (int)Math.Ceiling(left.TotalSeconds);
        return string.Create(CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");
    }

    /// <summary>Time gone, rounded down: <c>0:12</c>.</summary>
    public static string Gone(Duration past) => Clock(Duration.FromSeconds(Math.Floor(past.TotalSeconds)));

    /// <summary>A load and a count: <c>67.5 kg x 5</c>, <c>12 reps</c>, <c>30 s</c>.</summary>
    public static string Set(SetDone set) => set.Kind is SetKind.Hold or SetKind.HeldShare
        ? $"{set.Done} s{OnSide(set.Side)}"
        : set.Load is { Amount: > 0 } load ? $"{load} x {set.Done}" : $"{set.Done} reps";

    /// <summary>What an item asks for: <c>67.5 kg x 5</c>.</summary>
    public static string Asks(AgendaItem item) => item switch
    {
        HoldItem hold => $"{hold.Target} s",
        SetItem { Load: { Amount: > 0 } load } set => $"{load} x {set.Target}",
        SetItem set => $"{set.Target} reps",
        TotalItem total => $"{total.Total} in all",
        AccumulateItem time => $"{time.Total} s in all",
        TickItem { Minutes: > 0 } tick => $"about {tick.Minutes} min",
        _ => "",
    };

    /// <summary>Which one of how many: <c>warm-up 2 of 4</c>, <c>working set 3 of 5</c>, <c>hold 1 of 3</c>.</summary>
    public static string Which(AgendaItem item) => item switch
    {
        SearchItem search => $"finding the load, set {search.Number} of at most {search.Of}",
        AskItem ask => $"the question after search set {ask.Number}",
        RampItem ramp => $"warm-up {ramp.Number} of {ramp.Of}",
        WorkItem { Asked.Group: not null } work => $"round {work.Number} of {work.Of}",
        WorkItem work => $"working set {work.Number} of {work.Of}",
        HoldItem hold => $"hold {hold.Number} of {hold.Of}{OnSide(hold.Side)}",
        _ => "",
    };

    /// <summary>The short name of an item's exercise.</summary>
    public static string Name(Session s, AgendaItem item) => item switch
    {
        ConfirmItem confirm => confirm.Check.Text,
        SlotItem of => s.Setting.Catalogue[of.Asked.Exercise].Name,
        _ => "",
    };

    /// <summary>Reps or seconds in a row, as a coach writes them: <c>5 5 4</c>.</summary>
    public static string Row(IEnumerable<SetResult> sets) => string.Join(' ', Sides.Paired(sets).Select(r => Done(r) + (r.FormSlipped ? "~" : "")));

    /// <summary>What was done of a set: <c>12</c>, or both sides of a hold, the left first: <c>12/14</c>.</summary>
    public static string Done(SetResult set) => (set.Set.Side, set.OtherSide) switch
    {
        (Side.Left, { } right) => Inv($"{set.Set.Done}/{right}"),
        (Side.Right, { } left) => Inv($"{left}/{set.Set.Done}"),
        (Side.Left, null) => Inv($"{set.Set.Done}/"),
        (Side.Right, null) => Inv($"/{set.Set.Done}"),
        _ => Inv($"{set.Set.Done}"),
    };

    /// <summary>The side in words, led by a comma; empty for none.</summary>
    public static string OnSide(Side? side) => side switch
    {
        Side.Left => ", left",
        Side.Right => ", right",
        _ => "",
    };

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
