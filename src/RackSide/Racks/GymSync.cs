using RackSide.Logbook;
using RackSide.Training.Racks;

namespace RackSide.Racks;

/// <summary>
/// One exchange of a logbook with its gym: what waits is sent, what is new comes. It can be cut off anywhere and begun again:
/// what was sent twice is one event, and how far it came is written with what came.
/// </summary>
/// <param name="book">The logbook.</param>
/// <param name="gym">Its gym.</param>
/// <param name="stopping">Asked between batches whether to leave it at that.</param>
internal sealed class GymSync(LiteLogbook book, IGym gym, Func<bool>? stopping = null)
{
    /// <summary>As many as are taken while somebody may be training here: a few milliseconds' work.</summary>
    public const int Few = 50;

    /// <summary>As many as are taken while nobody does.</summary>
    public const int Many = 20_000;

    /// <summary>As many as are taken beside a screen on which nobody trains; the log may be copied once for them.</summary>
    public const int Some = 1_000;

    private const int SentAtOnce = 500;

    /// <summary>Whether somebody trains: then nothing is done that takes long, such as reading a whole history to send it, or copying the log.</summary>
    public bool Lightly { get; init; }

    /// <summary>Does it.</summary>
    /// <param name="most">How many are taken at once.</param>
    /// <returns>How many were sent, and how many came.</returns>
    /// <exception cref="GymTrouble">The gym cannot be had; what came until then is here.</exception>
    /// <exception cref="IOException">The logbook cannot be written.</exception>
    public (long Sent, long Taken) Run(int most)
    {
        Recognise();
        var sent = (Lightly ? 0 : SendEverything()) + SendWaiting();
        return (sent, Take(most));
    }

    // A server that was put back to an older state has another event at that number, or none.
    private void Recognise()
    {
        var share = book.Share;
        if (gym.Identity() != share.Gym)
        {
            throw new GymTrouble(ExitCode.Config, "this server holds another gym than the one that this rack joined; leave with rackside gym leave, then join anew");
        }

        if (share.Anchor is { } anchor && gym.At(share.Pulled) != anchor)
        {
            book.ShareAnew(whole: true);
        }
    }

    private long SendEverything()
    {
        var sent = 0L;
        if (book.Share.Whole == "")
        {
            foreach (var erased in book.Erased())
            {
                gym.Erase(erased);
            }
        }

        while (book.Share.Whole is { } done && !Stopping)
        {
            var lifter = book.LifterAfter(done);
            foreach (var batch in lifter is null ? [] : book.Everything(lifter).Chunk(SentAtOnce))
            {
                gym.Push(batch);
                sent += batch.Length;
            }

            book.SentWhole(lifter);
        }

        return sent;
    }

    private long SendWaiting()
    {
        var sent = 0L;
        while (!Stopping && book.Waiting(SentAtOnce) is { Count: > 0 } batch)
        {
            // An erasure is another kind of request, and goes in its turn.
            var run = batch[0].Event is LifterErased ? [batch[0]] : batch.TakeWhile(w => w.Event is not LifterErased).ToList();
            if (run[0].Event is LifterErased erased)
            {
                gym.Erase(erased);
            }
            else
            {
                gym.Push([.. run.Select(w => w.Event)]);
            }

            book.Sent(run[^1].Number);
            sent += run.Count;
        }

        return sent;
    }

    private long Take(int most)
    {
        var taken = 0L;
        while (!Stopping && !(Lightly && !book.TakesLightly) && gym.Pull(book.Share.Pulled, most) is { Count: > 0 } batch)
        {
            var read = new List<GymEvent>(batch.Count);
            foreach (var (_, line) in batch)
            {
                if (Read(line) is not { } one)
                {
                    break;
                }

                read.Add(one);
            }

            if (read.Count > 0)
            {
                book.Pull(read, batch[read.Count - 1].Position);
                taken += read.Count;
            }

            if (read.Count < batch.Count)
            {
                throw new GymTrouble(ExitCode.Protocol, "another rack wrote something that this version does not know; update RackSide on this machine. Everything before that is here");
            }
        }

        return taken;
    }

    private bool Stopping => stopping?.Invoke() is true;

    private static GymEvent? Read(string line)
    {
        try
        {
            return GymEventText.Read(line);
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }
}
