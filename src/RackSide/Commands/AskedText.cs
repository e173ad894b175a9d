using NodaTime;
using RackSide.Pages.Rack;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;

namespace RackSide.Commands;

/// <summary>Sets, loads and rests in few words.</summary>
internal static class AskedText
{
    /// <summary>Sets and reps as asked for that day: <c>5x5</c>, <c>3 x 30 s</c>.</summary>
    public static string Sets(Prescription asked) => PlanLines.Sets(asked);

    /// <summary>A load in the words of what carries it: <c>67.5 kg</c>, <c>pair of 5 kg</c>, <c>30 kg of help</c>; empty for none.</summary>
    public static string Load(Mass? load, Exercise? exercise) => (load, exercise?.LoadType) switch
    {
        (null, _) => "",
        ({ } each, LoadType.DumbbellPair) => $"pair of {each}",
        ({ Amount: 0 }, LoadType.AddedWeight) => "body weight",
        ({ } hung, LoadType.AddedWeight) => $"{hung} hung",
        ({ } help, LoadType.Assisted) => $"{help} of help",
        ({ } mass, _) => mass.ToString(),
    };

    /// <summary>A length of time as a coach says it: <c>90 s</c>, <c>2 min</c>.</summary>
    public static string Time(Duration time)
    {
        var seconds = (int)time.TotalSeconds;
        return seconds >= 60 && seconds % 60 == 0 ? $"{seconds / 60} min" : $"{seconds} s";
    }
}
