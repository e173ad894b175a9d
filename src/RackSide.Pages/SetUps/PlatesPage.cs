namespace RackSide.Pages.SetUps;

/// <summary>How many pairs of each plate. Digits are counts here, so the star goes to the next line.</summary>
internal static class PlatesPage
{
    public static readonly string Most = $"At most {UnitChoices.MostPairs} pairs of one plate.";
    public const string None = "There are no pairs to take away.";

    public static ListPage View(SetUpState state) => new(
        SetUpHints.Title("plates"),
        [.. state.Choices.Plates.Select(p => new ListLine(p.Mass.ToString(), Value: Count(p.Pairs)))],
        state.Line)
    {
        Place = SetUpHints.Place(state),
        Numbered = false,
        Above = ["How many pairs of each? A pair is one plate for each end of the bar."],
        Hints =
        [
            SetUpHints.GoOn, new("0-9", "pairs"), new("*", "next line"), new("+ -", "more, less"), SetUpHints.Back,
            SetUpHints.StopSigns,
        ],
    };

    public static SetUpTurn Press(SetUpState state, KeyPress key)
    {
        var (choices, count) = (state.Choices, state.Choices.Plates.Length);
        var pairs = choices.Plates[state.Line].Pairs;
        return key switch
        {
            _ when key.IsAccept() => new(state.GoOn()),
            _ when key.Digit() is { } digit => new(state.With(choices.WithPairs(state.Line, digit))),
            _ when key.IsMore() => new(state.With(choices.WithPairs(state.Line, pairs + 1)), pairs == UnitChoices.MostPairs ? Most : null),
            _ when key.IsFewer() => new(state.With(choices.WithPairs(state.Line, pairs - 1)), pairs == 0 ? None : null),
            _ when key.IsNextLine() => new(state with { Line = (state.Line + 1) % count }),
            _ when key.IsLineUp() => new(state with { Line = (state.Line + count - 1) % count }),
            _ => SetUpTurn.Refused(state),
        };
    }

    private static string Count(int pairs) => pairs switch { 0 => "none", 1 => "1 pair", _ => $"{pairs} pairs" };
}
