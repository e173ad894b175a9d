using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary>A set as it was written on paper.</summary>
/// <param name="Done">Reps or seconds; 0 or more.</param>
/// <param name="Slipped">Whether there was a ring around it.</param>
internal sealed record SheetSet(int Done, bool Slipped);

/// <summary>What was written on paper for one exercise.</summary>
/// <param name="Sets">The sets done, in order; empty where it was left out.</param>
/// <param name="Load">The load, where it was another than asked for; else null.</param>
internal sealed record SheetLine(IReadOnlyList<SheetSet> Sets, Mass? Load)
{
    /// <summary>What can be typed, for the first line of the dialogue.</summary>
    public const string Help =
        "ENTER: all done as asked. 5 5 4: the reps (or seconds) of each set; 5~ where form slipped. 22.5: 5 5 5: at another load. -: left out. q: stop, nothing is written.";

    private const int MostDone = 9999;

    /// <summary>Reads a line.</summary>
    /// <param name="typed">The line.</param>
    /// <param name="asked">What was asked for.</param>
    /// <returns>What was done, or why the line cannot be read.</returns>
    public static (SheetLine? Line, string? Refusal) Read(string typed, Prescription asked)
    {
        var text = typed.Trim();
        if (text.Length == 0)
        {
            return (AsAsked(asked), null);
        }

        if (text == "-")
        {
            return (new SheetLine([], null), null);
        }

        var mark = text.IndexOf(':', StringComparison.Ordinal);
        var load = mark < 0 ? null : LoadTyped(text[..mark].Trim(), asked);
        if (mark >= 0 && load is null)
        {
            return (null, asked.Load is null ? "no load is told for this one; type the counts alone" : $"\"{text[..mark].Trim()}\" is no load; type one such as 22.5 before the colon");
        }

        var sets = text[(mark + 1)..].Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries).Select(Set).ToList();
        return sets.Count == 0 || sets.Contains(null) ? (null, $"\"{text}\" cannot be read; type counts such as 5 5 4, or - or ENTER")
            : asked.Scheme is not Scheme.Total && sets.Count > Math.Max(asked.Targets.Count, 1) ? (null, $"{sets.Count} sets are told and {Math.Max(asked.Targets.Count, 1)} were asked for")
            : (new SheetLine([.. sets.OfType<SheetSet>()], load), null);
    }

    private static SheetLine AsAsked(Prescription asked) => new(asked.Scheme is Scheme.Tick ? [new SheetSet(0, false)] : [.. asked.Targets.Select(t => new SheetSet(t, false))], null);

    private static Mass? LoadTyped(string text, Prescription asked) =>
        asked.Load is { } was && NumberEntry.Parse(text) is { } number && number >= 0 ? new Mass(number, was.Unit) : null;

    private static SheetSet? Set(string text)
    {
        var slipped = text.EndsWith('~');
        return int.TryParse(slipped ? text[..^1] : text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var done) && done <= MostDone
            ? new SheetSet(done, slipped)
            : null;
    }
}
