using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary>Finds what a person means by an exercise.</summary>
internal sealed class ExerciseSearch(Catalogue catalogue, Plan plan, IReadOnlyList<SessionCard> sessions)
{
    private const int MostNamed = 5;

    private readonly IReadOnlyList<string> slots =
    [
        .. plan.Days.SelectMany(d => d.Slots).Select(s => s.Key)
            .Concat(sessions.SelectMany(s => s.Performed).Select(p => p.Slot))
            .Distinct(),
    ];

    /// <summary>
    /// An id, a name or a short name; else a slot's key; else a part of a name that only one exercise has, or only one that
    /// was done.
    /// </summary>
    /// <exception cref="Refusal">It is none of these, or of several.</exception>
    public ExerciseAsked Find(string text)
    {
        var typed = text.Trim();
        return Exactly(typed) is { } exercise ? Of(exercise)
            : slots.FirstOrDefault(s => Same(s, typed)) is { } slot ? new ExerciseAsked($"slot {slot}", null, slot)
            : Partly(typed) switch
            {
                [var only] => Of(only),
                [] => throw new Refusal(ExitCode.Usage, $"no exercise is called \"{typed}\"; {Suggestion(typed)}"),
                var several => throw new Refusal(ExitCode.Usage, $"\"{typed}\" may be {Named(several)}; name one of them"),
            };
    }

    private Exercise? Exactly(string typed) => catalogue.All.FirstOrDefault(e => Names(e).Any(n => Same(n, typed)));

    private List<Exercise> Partly(string typed)
    {
        var all = typed.Length == 0 ? [] : catalogue.All.Where(e => Names(e).Any(n => n.Contains(typed, StringComparison.OrdinalIgnoreCase))).ToList();
        var performed = sessions.SelectMany(s => s.Performed).Select(p => p.Exercise).ToHashSet();
        var done = all.Where(e => performed.Contains(e.Id)).ToList();
        return done.Count > 0 ? done : all;
    }

    private string Suggestion(string typed) =>
        Nearest.To(typed, catalogue.All.SelectMany(Names).Concat(slots).Select(n => n.ToLowerInvariant())) is { } near
            ? $"did you mean {near}?"
            : $"the slots of the plan are {PlainText.Or(slots)}";

    private static string Named(List<Exercise> several) => PlainText.Or(
        [.. several.Take(MostNamed).Select(e => e.Name), .. several.Count > MostNamed ? [$"{several.Count - MostNamed} more"] : Array.Empty<string>()]);

    private static ExerciseAsked Of(Exercise exercise) => new(exercise.Name, exercise, null);

    private static IEnumerable<string> Names(Exercise exercise) => [exercise.Id, exercise.Name, exercise.ShortName];

    private static bool Same(string name, string typed) => string.Equals(name, typed, StringComparison.OrdinalIgnoreCase);
}
