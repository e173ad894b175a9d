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
    // What takes long is done where nobody has been at the names for so long: a key would have to wait for it.
    private static readonly Duration Alone = Duration.FromMinutes(1);

    private readonly Gym gym;
    private readonly Household household;
    private readonly KioskSettings settings;
    private readonly GuessBrakes brakes = new();
    private readonly Stick stick;
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

    // Who lifts first of two on one bar.
    private Lifter? first;

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
        stick = new Stick(settings);
        inner = Home();
        touched = gym.Clock.GetCurrentInstant();
    }

    /// <summary>Whether somebody chose to shut the board down. It also ends after a restore, to begin anew with that logbook.</summary>
    public bool ShutDown { get; private set; }

    /// <summary>The look of whoever is at the screen, in the word of the house rules; null for the gym's own.</summary>
    public string? Look => (inner as RackVisit)?.Lifter?.Look ?? changed?.Look;

    /// <summary>How many facts of the last session could not be put on disk.</summary>
    public int Unwritten { get; private set; }

    /// <inheritdoc/>
    public bool Ended => ShutDown || inner is StickVisit { Restored: true };

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
        gym.Sharing?.Resting = inner is WhoConversation && now - touched >= Alone;
        if (inner is WhoConversation && gym.Sharing is { ErasedCame: true })
        {
            gym.EraseErased();
        }

        var bell = inner.Tick(now);
        GoOn();
        if (inner is WhoConversation ? gym.Today != shownOn || household.IsStale : now - touched >= settings.Idle && inner is not RackVisit { IsUnwritten: true })
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
        WhoConversation { Choice: WhoChoice.Trains who, Title: Household.WhichTitle } => Change(household.Shown(who.Index)),
        WhoConversation { Choice: WhoChoice.Trains who, Title: Household.FirstTitle } => Second(household.Shown(who.Index)),
        WhoConversation { Choice: WhoChoice.Trains who, Title: Household.SecondTitle } => Two(household.Shown(who.Index)),
        WhoConversation { Choice: WhoChoice.Trains who } => new RackVisit(gym, household.Shown(who.Index).Key, brakes: brakes, places: places),
        WhoConversation { Choice: WhoChoice.Others, Title: var asked } => household.Others(asked, Told()),
        WhoConversation => More(),
        HouseholdConversation { Choice: HouseholdChoice.Join } => new RackVisit(gym, null, joining: true, places: places),
        HouseholdConversation { Choice: HouseholdChoice.Change } => household.Which(Household.WhichTitle),
        HouseholdConversation { Choice: HouseholdChoice.Two } => household.Which(Household.FirstTitle),
        HouseholdConversation { Choice: HouseholdChoice.Stick } => new StickVisit(gym, stick),
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

    private WhoConversation Second(Lifter lifter)
    {
        first = lifter;
        return household.Which(Household.SecondTitle);
    }

    // Who cannot share a bar today is told under the names, and why.
    private IConversation Two(Lifter second)
    {
        try
        {
            return new RackVisit(gym, first!.Key, brakes: brakes, with: second.Key);
        }
        catch (Refusal refusal)
        {
            return household.Who(refusal.Message.Replace("--with: ", "", StringComparison.Ordinal) + ".");
        }
    }

    private HouseholdConversation More() => household.More(stick: settings.Stick is not null);

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
        LifterChange.Look => Changed(household.InTheNextLook(changed!), change),
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
