namespace RackSide.Files;

/// <summary>A number, or a range from a lower to a higher one, as a plan writes reps and seconds.</summary>
internal readonly record struct Span(int Low, int High)
{
    /// <summary>Reps: <c>5</c> or <c>6-12</c>.</summary>
    public static readonly Form<Span> Reps = new("a number of reps", "write reps such as 5, or a range such as 6-12", text => Parse(text, n => YamlValues.ParseWhole(n)))
    {
        Limits = "1 to 50 reps",
        Plausible = s => s.Within(1, 50),
    };

    /// <summary>A hold: <c>30 s</c>, <c>20-60 s</c> or <c>1-2 min</c>.</summary>
    public static readonly Form<Span> Hold = new("a length of hold", "write seconds such as 30 s, or a range such as 20-60 s", ParseHold)
    {
        Limits = "5 s to 300 s",
        Plausible = s => s.Within(5, 300),
    };

    /// <summary>Seconds in all, in as many holds or goes as it takes: <c>60 s</c> or <c>1-3 min</c>.</summary>
    public static readonly Form<Span> Accumulate = Hold with { Name = "a length of time", Limits = "10 s to 20 min", Plausible = s => s.Within(10, 1200) };

    private bool Within(int least, int most) => Math.Min(Low, High) >= least && Math.Max(Low, High) <= most;

    // The unit stands once, after the range, and counts for both ends.
    private static Span? ParseHold(string text)
    {
        var number = text.TrimEnd("abcdefghijklmnopqrstuvwxyz".ToCharArray()).TrimEnd();
        var unit = text[number.Length..].Trim();
        return Parse(number, n => Seconds($"{n} {unit}"));
    }

    private static int? Seconds(string text) => YamlValues.Duration.Parse(text) is { } time ? (int)time.TotalSeconds : null;

    private static Span? Parse(string text, Func<string, int?> number)
    {
        var ends = text.Replace('–', '-').Split('-', StringSplitOptions.TrimEntries);
        return ends.Length > 2 || number(ends[0]) is not { } low || number(ends[^1]) is not { } high ? null : new Span(low, high);
    }
}
