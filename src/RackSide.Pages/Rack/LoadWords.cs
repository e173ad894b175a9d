using RackSide.Training.Exercises;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>What hands must do to have the next load ready.</summary>
internal static class LoadWords
{
    /// <summary>What to change on the bar, or to fetch, between the last set done and the one to come.</summary>
    public static string Change(Session s, AgendaItem next)
    {
        var to = SetInHand.AskedLoad(s);
        if (BarInHand.Change(s, to) is { } change)
        {
            return change.Text;
        }

        return next is SlotItem of && to is { Amount: > 0 } load
            ? load == s.LastSet?.Set.Load && of.Asked.Exercise == s.LastSet.Set.Exercise
                ? "same load, nothing to change"
                : With(s.Setting.Catalogue[of.Asked.Exercise], load, s.Setting.Kit)
            : "";
    }

    /// <summary>
    /// What to change on the bar for the set on the page: always in a ramp, where changing plates is the rest, and
    /// elsewhere where something is to change that no rest page told.
    /// </summary>
    public static string Plates(Session s, Lifting p, SlotItem item) =>
        BarInHand.Change(s, SetInHand.Load(s, p)) is { } change
        && (item is RampItem || (!change.IsNone && (p.Rested is null || SetInHand.Load(s, p) != SetInHand.AskedLoad(s))))
            ? change.Text
            : "";

    /// <summary>What a load that goes on no bar is, in the hands of the one who fetches it; empty for a bar or no load.</summary>
    public static string With(Exercise exercise, Mass load, GymKit kit) => exercise.LoadType switch
    {
        _ when load.Amount == 0 => "",
        LoadType.DumbbellPair or LoadType.DumbbellSingle when HandleLoading.StackFor(load, exercise.LoadType, kit) is { } handle =>
            OnHandle(handle, exercise.LoadType),
        LoadType.DumbbellPair => $"with the pair of {load} dumbbells",
        LoadType.DumbbellSingle => $"with the {load} dumbbell",
        LoadType.MachineStack => $"with {PinAndAddOns.For(load, exercise, kit)?.Text ?? $"the pin at {load}"}",
        LoadType.AddedWeight => $"with {load} on the belt",
        LoadType.Assisted => $"with {load} of help: less is harder",
        _ => "",
    };

    private static string OnHandle(BarStack handle, LoadType type)
    {
        var plates = handle.Side.Count == 0 ? "bare" : $"{string.Join(" + ", handle.Side.Select(p => handle.NamesUnits ? p.ToString() : p.Number))} on each end";
        return type == LoadType.DumbbellPair ? $"with two of {handle.Bar.Name}, {plates}" : $"with {handle.Bar.Name}, {plates}";
    }
}
