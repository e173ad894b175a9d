namespace RackSide.Training.Loading;

/// <summary>
/// What a sleeve can look like, as far as it matters to what may still go on: its load, and how many are left of each kind
/// that may still come. Where plates run down in size, only the outermost kind and how many of it are on matter beside the
/// load, because no heavier plate may follow and no lighter one is on yet; so very many stacks are one state.
/// States are made a plate deeper at a time, because the best plan rarely needs a deep stack.
/// </summary>
internal sealed class SleeveStates
{
    private readonly ExactJob job;
    private readonly ulong[] one;
    private readonly Dictionary<State, int> numbers = [];
    private readonly List<State> states = [];
    private readonly List<long> loads = [];
    private readonly List<int> next = [];
    private List<int> frontier;

    public SleeveStates(ExactJob job)
    {
        this.job = job;
        one = new ulong[job.Kinds.Length + 1];
        one[^1] = 1;
        for (var kind = job.Kinds.Length - 1; kind >= 0; kind--)
        {
            one[kind] = one[kind + 1] * (ulong)(job.Counts[kind] + 1);
        }

        frontier = [NumberOf(new State(job.Bar, 0, 0, 0, 0))];
        StartPath = new int[job.Start.Length + 1];
        for (var i = 0; i < job.Start.Length; i++)
        {
            StartPath[i + 1] = NumberOf(With(states[StartPath[i]], job.Start[i]));
            frontier.Add(StartPath[i + 1]);
        }
    }

    /// <summary>How many there are so far; state 0 is the bare bar.</summary>
    public int Count => states.Count;

    /// <summary>The states of the start stack, from the bare bar outwards.</summary>
    public int[] StartPath { get; }

    /// <summary>How many plates that were not on at the start the deepest states hold.</summary>
    public int Depth { get; private set; }

    /// <summary>Whether a plate more gives no further state.</summary>
    public bool Exhausted => frontier.Count == 0;

    /// <summary>The load of each state, bar included.</summary>
    public ReadOnlySpan<long> Loads => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(loads);

    /// <summary>For each state and kind the state with one such plate more, or -1; a state's kinds stand together.</summary>
    public ReadOnlySpan<int> Next => System.Runtime.InteropServices.CollectionsMarshal.AsSpan(next);

    /// <summary>Makes the states that are one plate deeper.</summary>
    public void Deepen()
    {
        var deepest = frontier;
        (frontier, Depth) = ([], Depth + 1);
        foreach (var number in deepest)
        {
            for (var kind = job.HeaviestInside ? states[number].From : 0; kind < job.Kinds.Length; kind++)
            {
                if (CanTake(states[number], kind))
                {
                    next[(number * job.Kinds.Length) + kind] = NumberOf(With(states[number], kind));
                }
            }
        }
    }

    private bool CanTake(State state, int kind) =>
        state.Load + job.Twice[kind] <= job.Heaviest
        && state.Used % one[kind] / one[kind + 1] < (ulong)job.Counts[kind]
        && !(state.Plates >= job.Room)
        && !(state.Width + job.Widths[kind] > job.Sleeve);

    /// <summary>Kinds that may no longer come are forgotten, and so is the number of plates where room is no matter.</summary>
    private State With(State state, int kind) => new(
        state.Load + job.Twice[kind],
        (job.HeaviestInside ? state.Used % one[kind] : state.Used) + one[kind + 1],
        job.HeaviestInside ? kind : 0,
        job.Room is null ? 0 : state.Plates + 1,
        state.Width + job.Widths[kind]);

    private int NumberOf(State state)
    {
        if (!numbers.TryGetValue(state, out var number))
        {
            number = numbers[state] = states.Count;
            states.Add(state);
            loads.Add(state.Load);
            next.AddRange(Enumerable.Repeat(-1, job.Kinds.Length));
            frontier?.Add(number);
        }

        return number;
    }

    /// <summary>A state.</summary>
    /// <param name="Load">Bar and plates.</param>
    /// <param name="Used">The plates of the kinds that may still come, as digits of one number.</param>
    /// <param name="From">The heaviest kind that may come.</param>
    /// <param name="Plates">How many are on.</param>
    /// <param name="Width">How much of the sleeve they take.</param>
    private readonly record struct State(long Load, ulong Used, int From, int Plates, long Width);
}
