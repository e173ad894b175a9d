using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Settings;

namespace RackSide.Arrivals;

/// <summary>
/// A stay that is shown while it begins. The page that was kept stands until the gym is open; keys that come meanwhile are held
/// back and answered by what the logbook says. Where that is another page than the one they were pressed on, they are dropped.
/// </summary>
internal sealed class Arrival : IConversation, IClock, IDisposable
{
    private readonly KeptPage? kept;
    private readonly IClock meanwhile;
    private readonly Task<Stay> opening;
    private readonly List<KeyPress> held = [];
    private Stay? stay;
    private PageSize size;
    private Action? wake;

    /// <summary>Begins a stay.</summary>
    /// <param name="kept">What is shown meanwhile; null begins it before anything is shown.</param>
    /// <param name="meanwhile">The clock that is gone by until the gym's own hangs there.</param>
    /// <param name="open">Opens the gym.</param>
    /// <exception cref="Refusal">It cannot be opened, and nothing was to be shown meanwhile.</exception>
    public Arrival(KeptPage? kept, IClock meanwhile, Func<Stay> open)
    {
        (this.kept, this.meanwhile) = (kept, meanwhile);
        stay = kept is null ? open() : null;

        // On a thread of its own: the pool has as many as the machine has cores, and the screen's reader must not wait for one.
        opening = stay is null ? Task.Factory.StartNew(open, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default) : Task.FromResult(stay);
        opening.ContinueWith(_ => wake?.Invoke(), TaskScheduler.Default);
    }

    /// <summary>The size it was last drawn in; null where it was not.</summary>
    public PageSize? Drawn => size == default ? null : size;

    /// <summary>The stay, once it has begun.</summary>
    /// <exception cref="Refusal">It could not.</exception>
    public Stay Stay => opening.GetAwaiter().GetResult();

    /// <inheritdoc/>
    public Action? Wake
    {
        get => wake;
        set
        {
            wake = value;
            stay?.Visit.Wake = value;
            if (stay is null && opening.IsCompleted)
            {
                value?.Invoke();
            }
        }
    }

    /// <inheritdoc/>
    public bool Ended => stay?.Visit.Ended ?? opening.IsFaulted;

    /// <summary>How it is painted.</summary>
    /// <param name="there">How, once the gym is open.</param>
    public Appearance Look(Func<Stay, Appearance> there) => stay is null ? kept!.Look : there(stay);

    /// <inheritdoc/>
    public Instant GetCurrentInstant() => (stay?.Gym.Clock ?? meanwhile).GetCurrentInstant();

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now)
    {
        this.size = size;
        return stay?.Visit.Draw(size, now) ?? Shown;
    }

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        if (stay is not null)
        {
            return stay.Visit.Press(key, now);
        }

        held.Add(key);
        return Begun(now);
    }

    /// <inheritdoc/>
    public Bell Tick(Instant now) => stay is null ? Begun(now) : stay.Visit.Tick(now);

    /// <summary>Lets go of what was opened.</summary>
    public void Dispose()
    {
        ((IAsyncResult)opening).AsyncWaitHandle.WaitOne();
        if (opening.IsCompletedSuccessfully)
        {
            opening.Result.Dispose();
        }
    }

    // A window of another size than last time has nothing to show yet.
    private Page Shown => kept!.Shown.Size == size ? kept.Shown : Page.Of(size, [.. Enumerable.Repeat(Cell.Blank, size.Columns * size.Rows)], 0, 0);

    private Bell Begun(Instant now)
    {
        if (!opening.IsCompletedSuccessfully)
        {
            return Bell.None;
        }

        stay = opening.Result;
        stay.Visit.Wake = wake;
        var bell = Bell.None;
        if (held.Count > 0 && size != default && stay.Visit.Draw(size, now).Text == Shown.Text)
        {
            foreach (var key in held.TakeWhile(_ => !stay.Visit.Ended))
            {
                bell = stay.Visit.Press(key, now);
            }
        }

        held.Clear();
        return bell;
    }
}
