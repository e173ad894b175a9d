using RackSide.Training.Exercises;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Sessions;

namespace RackSide.Pages.Rack;

/// <summary>What hands must do to have the next load ready.</summary>
internal static class LoadWords
{
    /// <summary>The stack for a load, where the item's exercise goes on a bar and the kit can load it.</summary>
    public static BarStack? StackOf(Session s, AgendaItem? item, Mass? load) =>
        item is SlotItem of && load is { } mass && s.Setting.Catalogue[of.Asked.Exercise].LoadType == LoadType.Barbell
            ? s.Setting.Loads.StackFor(mass)
            : null;

    /// <summary>What to change between the last set done and the one to come.</summary>
    public static string Change(Session s, AgendaItem next)
    {
        var to = SetInHand.AskedLoad(s);
        if (StackOf(s, next, to) is { } stack)
        {
            var last = s.LastSet?.Set;
            var from = last is null ? null : Bar(s, last.Exercise, last.Load);
            return PlateChange.Between(from, stack).Text;
        }

        return next is SlotItem of && to is { Amount: > 0 } load
            ? load == s.LastSet?.Set.Load && of.Asked.Exercise == s.LastSet.Set.Exercise
                ? "same load, nothing to change"
                : With(s.Setting.Catalogue[of.Asked.Exercise], load)
            : "";
    }

    /// <summary>What a load that goes on no bar is, in the hands of the one who fetches it; empty for a bar or no load.</summary>
    public static string With(Exercise exercise, Mass load) => exercise.LoadType switch
    {
        _ when load.Amount == 0 => "",
        LoadType.DumbbellPair => $"with the pair of {load} dumbbells",
        LoadType.DumbbellSingle => $"with the {load} dumbbell",
        LoadType.MachineStack => $"with the pin at {load}",
        LoadType.AddedWeight => $"with {load} on the belt",
        LoadType.Assisted => $"with {load} of help: less is harder",
        _ => "",
    };

    private static BarStack? Bar(Session s, string exercise, Mass? load) =>
        load is { } mass && s.Setting.Catalogue[exercise].LoadType == LoadType.Barbell ? s.Setting.Loads.StackFor(mass) : null;
}
