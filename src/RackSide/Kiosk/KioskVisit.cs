using NodaTime;
using RackSide.Pages;
using RackSide.Pages.Lifters;
using RackSide.Training.History;
using RackSide.Visits;

namespace RackSide.Kiosk;

/// <summary>
/// A rack that several share, left on for good: the names, behind each a stay of its own, and the names again when the stay
/// ends or nobody has pressed a key for a while. A session left that way stays open, every set of it written.
/// </summary>
internal sealed class KioskVisit : IConversation, IDisposable
{
    private readonly Gym gym;
    private readonly Household household;
    private readonly KioskSettings settings;
    private readonly GuessBrakes brakes = new();
    private readonly string told;
    private readonly Action ticked;
    private readonly Func<IReadOnlyList<string>>? places;
    private IConversation inner;
    private Instant touched;
    private LocalDate shownOn;
    private Action? wake;
    private string? copiedTo;

    // Whose settings are being changed.
    private Lifter? changed;

    /// <summary>Shows the names, or the set-up where nobody has joined.</summary>
    /// <param name="gym">Where.</param>
    /// <param name="settings">What the unit says.</param>
    /// <param name="ticked">Called at each tick of the screen.</param>
    /// <param name="told">What is told under the names for good; empty for nothing.</param>
    /// <param name="places">Gives other places for a copy, such as USB sticks; none if not said.</param>
    public KioskVisit(Gym gym, KioskSettings settings, Action ticked, string told = "", Func<IReadOnlyList<string>>? places = null)
    {
        (this.gym, this.settings, this.ticked, this.told, this.places) = (gym, settings, ticked, told, places);
        household = new Household(gym);
        inner = Home();
        touched = gym.Clock.GetCurrentInstant();
    }

    /// <summary>Whether somebody chose to shut the board down.</summary>
    public bool ShutDown { get; private set; }

    /// <summary>How many facts of the last session could not be put on disk.</summary>
    public int Unwritten { get; private set; }

    /// <inheritdoc/>
    public bool Ended => ShutDown;

    /// <inheritdoc/>
    public Action? Wake
    {
        get => wake;
        set => inner.Wake = wake = value;
    }

    /// <inheritdoc/>
    public Page Draw(PageSize size, Instant now) => inner.Draw(size, now);

    /// <inheritdoc/>
    public Bell Press(KeyPress key, Instant now)
    {
        var bell = inner.Press(key, now);
        if (inner is PinConversation asked)
        {
            brakes.Keep(changed!, asked);
        }

        GoOn();

        // Asked for anew: the key may have told the clock another date.
        touched = gym.Clock.GetCurrentInstant();
        return bell;
    }

    /// <inheritdoc/>
    public Bell Tick(Instant now)
    {
        ticked();
        var bell = inner.Tick(now);
        GoOn();
        if (inner is WhoConversation ? gym.Today != shownOn : now - touched >= settings.Idle && inner is not RackVisit { IsUnwritten: true })
        {
            Show(Home());
        }

        return bell;
    }

    /// <summary>Waits until what was accepted is on disk, or cannot be.</summary>
    public void Dispose() => Leave(inner);

    private void GoOn()
    {
        if (inner.Ended && !Ended)
        {
            Show(After(inner));
        }
    }

    private void Show(IConversation next)
    {
        if (next != inner)
        {
            Leave(inner);
            inner = next;
            inner.Wake = wake;
        }
    }

    private void Leave(IConversation left)
    {
        (left as IDisposable)?.Dispose();
        if (left is RackVisit visit)
        {
            (Unwritten, copiedTo) = (visit.Unwritten.Count, visit.CopiedTo);
            gym.BackUp();
        }
    }

    private IConversation Home()
    {
        (shownOn, changed) = (gym.Today, null);
        return household.Lifters.Count == 0 ? new RackVisit(gym, null, places: places) : household.Who(Told());
    }

    private string Told() => Unwritten == 0 ? told
        : $"{told} {Unwritten} entries of the last session could not be written; free some space and {(copiedTo is null ? "enter them again" : $"restore {copiedTo}")}.".TrimStart();

    private IConversation After(IConversation ended) => ended switch
    {
        WhoConversation { Choice: WhoChoice.Trains who, Title: Household.WhichTitle } => Change(household.Lifters[who.Index]),
        WhoConversation { Choice: WhoChoice.Trains who } => new RackVisit(gym, household.Lifters[who.Index].Key, brakes: brakes, places: places),
        WhoConversation => More(),
        HouseholdConversation { Choice: HouseholdChoice.Join } => new RackVisit(gym, null, joining: true, places: places),
        HouseholdConversation { Choice: HouseholdChoice.Change } => household.Which(),
        HouseholdConversation { Choice: HouseholdChoice.ShutDown } => new ShutDownConversation(),
        PinConversation { Right: true } => Household.Settings(changed!),
        LifterConversation { Change: { } change } => Change(change),
        NameConversation { Name: { } name } => Changed(household.Keep(changed! with { Name = name }), LifterChange.Name),
        NameConversation => Household.Settings(changed!),
        NewPinConversation { Pin: { } pin } => Changed(household.Keep(changed! with { Pin = pin.Length == 0 ? null : PinProof.Of(pin) }), LifterChange.Pin),
        NewPinConversation => Household.Settings(changed!, LifterChange.Pin),
        ShutDownConversation { ShutDown: true } => Off(ended),
        RackVisit when household.Lifters.Count == 0 => More(),
        _ => Home(),
    };

    private HouseholdConversation More() => household.More(stick: false);

    private IConversation Change(Lifter lifter)
    {
        changed = lifter;
        return lifter.Pin is null ? Household.Settings(lifter) : brakes.Ask(lifter);
    }

    private IConversation Change(LifterChange change) => change switch
    {
        LifterChange.Name => household.Rename(changed!),
        LifterChange.Unit => Changed(household.InTheOtherUnit(changed!), change),
        LifterChange.Pin => new NewPinConversation(changed!.Name, changed.Pin is not null),
        LifterChange.Plan => Changed(household.OnTheNextPlan(changed!), change),
        _ => Home(),
    };

    private LifterConversation Changed(Lifter lifter, LifterChange at)
    {
        changed = lifter;
        return Household.Settings(lifter, at);
    }

    private IConversation Off(IConversation last)
    {
        ShutDown = true;
        return last;
    }
}
