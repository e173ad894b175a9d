using NodaTime;
using RackSide.Logbook.Copies;
using RackSide.Logbook.Disks;
using RackSide.Logbook.Storing;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Logbook;

/// <summary>The logbook as one of several of a gym: what waits to be sent, and what comes from the other racks.</summary>
public sealed partial class LiteLogbook
{
    // What one journal record may hold; more goes past the journal, with a copy after it.
    private const int AtOnce = 64;

    // Fifty events, one of them a session's beginning with all it asks for.
    private const int LightBytes = 48 * 1024;

    /// <summary>Dates the identities of a rack in a gym; without one they only count.</summary>
    public IClock? Clock { get; set; }

    /// <summary>How it stands with the other racks.</summary>
    public ShareStatus Share
    {
        get
        {
            lock (gate)
            {
                var (register, share) = (store.Register, store.Register.Share);
                return new(register.Rack, share.State.Gym, share.State.Joined, share.WaitingCount, share.State.Pulled, share.State.Anchor, share.State.Whole);
            }
        }
    }

    /// <summary>
    /// Joins a gym. Every lifter gets a key that is the same on every rack, and everything here is to be sent. It is a new
    /// logbook in the old one's place; a power cut leaves one or the other.
    /// </summary>
    /// <exception cref="IOException">It could not be written; the old one is still there.</exception>
    public void Join(string gym) => Anew(register =>
        Adopting.Of(register.Whole(), register.Rack, ShareState.Alone with { Gym = gym, Joined = true }, register.Share.Gone));

    /// <summary>Leaves the gym; everything stays here and there.</summary>
    public void Leave() => WriteAndSettle(_ => new Entry.GymLeft());

    /// <summary>The first events that wait to be sent, with the number by which their arrival is told.</summary>
    public IReadOnlyList<(long Number, GymEvent Event)> Waiting(int most) => Read(register => register.Share.Waiting.Take(most));

    /// <summary>What waited, up to this number, has arrived.</summary>
    public void Sent(long number) => WriteAndSettle(register => new Entry.Sent(number, register.Share.State.Whole));

    /// <summary>Where everything is sent, it has arrived up to this lifter; null where it all has.</summary>
    public void SentWhole(string? lifter) => WriteAndSettle(_ => new Entry.Sent(0, lifter));

    /// <summary>The gym's events are to be taken from the first on again, and everything sent again too where that is asked for.</summary>
    public void ShareAnew(bool whole) => WriteAndSettle(_ => new Entry.ShareAnew(whole));

    /// <summary>The first lifter after this one by key; null where there is none.</summary>
    public string? LifterAfter(string key) => Read(register => register.Lifters.Select(l => l.Key)
        .Where(k => string.CompareOrdinal(k, key) > 0).Order(StringComparer.Ordinal).Take(1)).FirstOrDefault();

    /// <summary>Those who were erased.</summary>
    public IReadOnlyList<LifterErased> Erased() => Read(register => register.Share.Gone);

    /// <summary>Everything that is known of a lifter, as events.</summary>
    public IReadOnlyList<GymEvent> Everything(string lifter) => Read(register =>
        register.Share.Told(lifter).Select(t => (GymEvent)new LifterTold(t.Id, register.Lifter(lifter)!, t.Fields))
            .Concat(register.AllOf(lifter).SelectMany(s => s.Facts.Select(f => (GymEvent)new SessionFact(lifter, s.Head.Id, f)).Prepend(new SessionStarted(s.Head))))
            .Concat(register.Share.Early.Where(e => e.Lifter == lifter))
            .Concat(register.Told.Where(t => t.Lifter == lifter).Select(t => new OutsideFact(lifter, t.Fact)))
            .Concat(register.Weights.Where(w => w.Lifter == lifter).Select(w => new OutsideWeight(w.Id, lifter, w.Date, w.Weight))));

    /// <summary>
    /// Takes events of the gym, all or none, with how far that is. One that is here already stays as it is; nothing of somebody
    /// erased is taken. Many at once go past the journal, which takes longer: not while somebody trains here.
    /// </summary>
    /// <param name="events">In the gym's order.</param>
    /// <param name="position">The gym's number of the last.</param>
    /// <exception cref="IOException">They could not be written.</exception>
    public void Pull(IReadOnlyList<GymEvent> events, long position)
    {
        if (events.Count <= AtOnce)
        {
            WriteAndSettle(register => new Entry.Pulled([.. events.Where(e => !IsEcho(register, e))], position) { Last = Last(events) });
            return;
        }

        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            store.Import(new Entry.Pulled(events, position) { Last = Last(events) });
            writes++;
            lastSequence = Math.Max(lastSequence, store.Register.HighestSequence);
        }
    }

    /// <summary>
    /// Whether a few events can be taken now without the whole log being copied for it, which takes longer the more it holds. While
    /// somebody trains, none are taken where not.
    /// </summary>
    public bool TakesLightly
    {
        get
        {
            lock (gate)
            {
                return !closed && store.Trouble is null && store.HasAmpleRoomFor(LightBytes);
            }
        }
    }

    /// <summary>Whether something of a lifter whom another rack erased is still on this disk.</summary>
    public bool HoldsErased
    {
        get
        {
            lock (gate)
            {
                return !closed && store.Register.HoldsErased;
            }
        }
    }

    /// <summary>
    /// Makes log, copy, journal and backups anew without those whom another rack erased; nobody may train meanwhile. Until
    /// then nothing of theirs is shown.
    /// </summary>
    /// <exception cref="IOException">Something could not be written; begin again.</exception>
    public void EraseErased() => EraseErased(FolderDisk.IfThere(Path.Combine(disk.Folder, Backups.FolderName)));

    /// <summary>The same, with the backups on another disk or none.</summary>
    internal void EraseErased(IDisk? backups) => Anew(register =>
    {
        var all = register.Whole();
        foreach (var gone in register.Share.Gone)
        {
            Erasing.Of(gone.Lifter, disk, backups);
        }

        return all.Renamed(NewRack(), key => register.Share.IsGone(key) ? null : key);
    });

    private static FactId? Last(IReadOnlyList<GymEvent> events) => events.Count > 0 ? events[^1].Id : null;

    // What this rack sent comes back to it; it need not be written again.
    private static bool IsEcho(Register register, GymEvent one) => one.Id.Rack == register.Rack && one switch
    {
        SessionStarted e => register.Has(e.Id),
        SessionFact e => register.Session(e.Session)?.Facts.Any(f => f.Id == e.Id) is true,
        OutsideFact e => register.IsTold(e.Id),
        _ => false,
    };

    private long NextCount() => store.Register.Share.State.Joined && Clock is { } clock
        ? HybridClock.Next(lastSequence, clock.GetCurrentInstant())
        : lastSequence + 1;

    // A backup or a record that takes this logbook's place stays in its gym, and brings nobody back who was erased.
    private Contents InPlace(Contents other)
    {
        var share = store.Register.Share;
        return share.State.Gym is null ? other : Adopting.Of(other, other.Rack, share.State, share.Gone);
    }

    // In a gym the erasure itself is kept and sent: it tells a key that says nothing.
    private Contents Without(Contents all, string lifter, string rack)
    {
        var share = store.Register.Share;
        var rest = all.Without(lifter, rack);
        if (share.State.Gym is not null)
        {
            var erased = new LifterErased(new FactId(store.Register.Rack, NextCount()), lifter);
            rest.Share.Erase(erased);
            rest.Share.Wait(erased);
        }

        return rest;
    }

    // Another logbook in this one's place, which stays open.
    private void Anew(Func<Register, Contents> made)
    {
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(closed, this);
            var contents = made(store.Register);
            CloseStore();
            closed = true;
            Replacing.Install(disk, contents, JournalRoom);
            (store, _) = new Opening(disk, Instant.MinValue, JournalRoom, NewRack).Run();
            (closed, lastSequence) = (false, Math.Max(lastSequence, store.Register.HighestSequence));
            writes++;
        }
    }
}
