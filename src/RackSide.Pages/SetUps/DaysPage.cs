using System.Collections.Immutable;
using NodaTime;

namespace RackSide.Pages.SetUps;

/// <summary>Which weekdays: three, with a day between, because a plan's training days never touch.</summary>
internal static class DaysPage
{
    private const int DaysAWeek = 3;

    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("training days"),
        [.. Week.Select(day => new ListLine(day.ToString(), state.Days.Contains(day)))],
        state.Line)
    {
        Place = SetUpHints.Place(state),
        Above = ["Which three days? Leave a day between them."],
        Hints = [SetUpHints.GoOn, SetUpHints.Tick(Week.Count), SetUpHints.Move, SetUpHints.Back, SetUpHints.StopSigns],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key) => key switch
    {
        _ when key.IsAccept() => Refusal(state.Days) is { } why ? SetUpTurn.Refused(state, why) : new(state.GoOn()),
        _ when ListPage.Tick(key, state.Line, Week.Count) is { } line => new(Toggle(state, line)),
        _ when ListPage.Move(key, state.Line, Week.Count) is { } line => new(state with { Line = line }),
        _ => SetUpTurn.Refused(state),
    };

    /// <summary>Why these days will not do, in one sentence; null where they will.</summary>
    public static string? Refusal(ImmutableSortedSet<IsoDayOfWeek> days) => days.Count != DaysAWeek
        ? $"Three days are wanted; {days.Count} {(days.Count == 1 ? "is" : "are")} ticked."
        : days.Where(day => days.Contains(After(day))).Select(day => $"{Short(day)} and {Short(After(day))} touch: leave a day between.").FirstOrDefault();

    /// <summary>A weekday in three letters.</summary>
    public static string Short(IsoDayOfWeek day) => day.ToString()[..3];

    private static IReadOnlyList<IsoDayOfWeek> Week { get; } = [.. Enumerable.Range(1, 7).Select(n => (IsoDayOfWeek)n)];

    // Sunday touches the Monday of the next week.
    private static IsoDayOfWeek After(IsoDayOfWeek day) => day == IsoDayOfWeek.Sunday ? IsoDayOfWeek.Monday : day + 1;

    private static SetUpState Toggle(SetUpState state, int line) => state with
    {
        Line = line,
        Days = state.Days.Contains(Week[line]) ? state.Days.Remove(Week[line]) : state.Days.Add(Week[line]),
    };
}
