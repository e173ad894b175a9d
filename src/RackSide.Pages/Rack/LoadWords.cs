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

        return (next, to) switch
        {
            (SlotItem of, { Amount: > 0 } load) => Take(s.Setting.Catalogue[of.Asked.Exercise], load, s.LastSet?.Set.Load),
            _ => "",
        };
    }

    private static BarStack? Bar(Session s, string exercise, Mass? load) =>
        load is { } mass && s.Setting.Catalogue[exercise].LoadType == LoadType.Barbell ? s.Setting.Loads.StackFor(mass) : null;

    private static string Take(Exercise exercise, Mass load, Mass? last) => exercise.LoadType switch
    {
        _ when load == last => "same load, nothing to change",
        LoadType.DumbbellPair => $"take the pair of {load} dumbbells",
        LoadType.DumbbellSingle => $"take the {load} dumbbell",
        LoadType.MachineStack => $"pin at {load}",
        LoadType.AddedWeight => $"hang {load} on the belt",
        LoadType.Assisted => $"help of {load}",
        _ => "",
    };
}
