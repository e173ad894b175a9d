using System.Diagnostics;

namespace RackSide.Training.Plans;

/// <summary>How many sets of what a slot asks for.</summary>
public abstract record Scheme
{
    private Scheme()
    {
    }

    /// <summary>How many sets; 1 or more.</summary>
    public abstract int Sets { get; init; }

    /// <summary>The same reps in every set: 5x5.</summary>
    public sealed record Fixed(int Sets, int Reps) : Scheme;

    /// <summary>Reps that climb from the bottom to the top of a range before the load does: 3x6-12.</summary>
    public sealed record Range(int Sets, int Low, int High) : Scheme;

    /// <summary>Timed holds that climb from the low to the high number of seconds.</summary>
    public sealed record Hold(int Sets, int LowSeconds, int HighSeconds) : Scheme;

    /// <summary>A count over the whole session, in as many sets as it takes.</summary>
    public sealed record Total(int Reps) : Scheme
    {
        /// <summary>One, because the sets are the lifter's to choose.</summary>
        public override int Sets { get; init; } = 1;
    }

    /// <summary>Seconds over the whole session, in as many holds or goes as it takes; they climb from the low to the high number.</summary>
    public sealed record Accumulate(int LowSeconds, int HighSeconds) : Scheme
    {
        /// <summary>One, because the holds are the lifter's to choose.</summary>
        public override int Sets { get; init; } = 1;
    }

    /// <summary>Something to do and tick off, with a guide in minutes (0 for none).</summary>
    public sealed record Tick(int Minutes) : Scheme
    {
        /// <summary>One tick.</summary>
        public override int Sets { get; init; } = 1;
    }

    /// <summary>As a coach would write it: <c>5x5</c>, <c>3x6-12</c>, <c>3 x 20-60 s</c>, <c>100 in all</c>.</summary>
    public string Text => this switch
    {
        Fixed f => $"{f.Sets}x{f.Reps}",
        Range r => $"{r.Sets}x{r.Low}-{r.High}",
        Hold h => h.LowSeconds == h.HighSeconds ? $"{h.Sets} x {h.LowSeconds} s" : $"{h.Sets} x {h.LowSeconds}-{h.HighSeconds} s",
        Total t => $"{t.Reps} in all",
        Accumulate a => a.LowSeconds == a.HighSeconds ? $"{a.LowSeconds} s in all" : $"{a.LowSeconds}-{a.HighSeconds} s in all",
        Tick { Minutes: > 0 } t => $"{t.Minutes} min",
        Tick => "tick",
        _ => throw new UnreachableException(),
    };
}
