using NodaTime;

namespace RackSide.Training.History;

/// <summary>How sore the whole body is in the morning.</summary>
public enum Soreness
{
    /// <summary>Not sore.</summary>
    None,

    /// <summary>A little; it goes with moving.</summary>
    Some,

    /// <summary>Much; it changes how one moves.</summary>
    Much,
}

/// <summary>Told outside a session, in a check-in: what is known of a day besides the training. What is null was not told.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When it was told.</param>
/// <param name="On">The day it speaks of: sleep is that of the night that ended in it.</param>
public sealed record DayTold(FactId Id, Instant At, LocalDate On) : Fact(Id, At)
{
    /// <summary>How long was slept in the night that ended on the day.</summary>
    public Duration? Slept { get; init; }

    /// <summary>Food of the whole day, kcal, as a rough number.</summary>
    public int? Kilocalories { get; init; }

    /// <summary>Drunk in the whole day, millilitres.</summary>
    public int? Millilitres { get; init; }

    /// <summary>How sore the body was in the morning.</summary>
    public Soreness? Sore { get; init; }
}

/// <summary>What is known of each day: of each thing the word told last.</summary>
public static class DaysTold
{
    /// <summary>One for each day of which anything was told and stands, oldest first.</summary>
    /// <param name="told">What was told outside sessions and stands, in the order told.</param>
    public static IReadOnlyList<DayTold> Of(IEnumerable<Fact> told) =>
        [.. told.OfType<DayTold>().GroupBy(d => d.On).OrderBy(day => day.Key).Select(day => day.Aggregate(Joined))];

    private static DayTold Joined(DayTold before, DayTold later) => later with
    {
        Slept = later.Slept ?? before.Slept,
        Kilocalories = later.Kilocalories ?? before.Kilocalories,
        Millilitres = later.Millilitres ?? before.Millilitres,
        Sore = later.Sore ?? before.Sore,
    };
}
