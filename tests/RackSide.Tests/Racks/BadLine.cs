using RackSide.Racks;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>
/// A gym behind a line that fails: a request that never arrives, an answer that never comes back although the request was
/// done, a part of a batch, and what was delivered already coming again among what is new, in another order.
/// </summary>
internal sealed class BadLine(IGym gym, Random chance) : IGym
{
    /// <summary>Whether it fails at all.</summary>
    public bool Bad { get; set; } = true;

    /// <summary>How often it failed.</summary>
    public int Failures { get; private set; }

    /// <inheritdoc/>
    public string Identity() => Over(gym.Identity);

    /// <inheritdoc/>
    public void Push(IReadOnlyList<GymEvent> events) => Over(() =>
    {
        GymEvent[] shuffled = [.. events];
        if (Bad && chance.Next(3) == 0)
        {
            chance.Shuffle(shuffled);
            gym.Push([.. shuffled.Take(chance.Next(shuffled.Length + 1))]);
        }

        gym.Push(Bad ? shuffled : events);
        return 0;
    });

    /// <inheritdoc/>
    public void Erase(LifterErased erased) => Over(() =>
    {
        gym.Erase(erased);
        return 0;
    });

    /// <inheritdoc/>
    public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) => Over(() =>
    {
        var most2 = Bad ? 1 + chance.Next(most) : most;
        if (!Bad || chance.Next(3) > 0)
        {
            return gym.Pull(after, most2);
        }

        (long, string)[] again = [.. gym.Pull(Math.Max(0, after - chance.Next(8)), most2)];
        if (again.All(e => e.Item1 <= after))
        {
            return gym.Pull(after, most2);
        }

        chance.Shuffle(again);
        return again;
    });

    /// <inheritdoc/>
    public FactId? At(long position) => Over(() => gym.At(position));

    private T Over<T>(Func<T> request)
    {
        if (Bad && chance.Next(9) == 0)
        {
            Failures++;
            throw new GymTrouble(1, "the request never arrived");
        }

        var answer = request();
        if (Bad && chance.Next(9) == 0)
        {
            Failures++;
            throw new GymTrouble(1, "the answer never came back");
        }

        return answer;
    }
}
