using RackSide.Pages.Lifters;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Kiosk;

/// <summary>Those who share a rack: opens the pages about them, and keeps what is changed of them.</summary>
/// <param name="gym">The gym.</param>
internal sealed class Household(Gym gym)
{
    /// <summary>What the page of names asks where it leads to a lifter's settings.</summary>
    public const string WhichTitle = "WHO IS TO BE CHANGED?";

    /// <summary>What it asks of two on one bar.</summary>
    public const string FirstTitle = "ONE BAR: WHO LIFTS FIRST?";

    /// <summary>And then.</summary>
    public const string SecondTitle = "ONE BAR: AND WHO ELSE?";

    // As they were when the page was made: another rack's lifter may come at any moment, and no digit may then mean somebody else.
    private IReadOnlyList<Lifter> shown = [];
    private int page;

    /// <summary>Those who train here: a few in the order they joined; where they are more than digits, by name.</summary>
    public IReadOnlyList<Lifter> Lifters => gym.Logbook.Lifters() is { Count: > WhoConversation.Most } many
        ? [.. many.OrderBy(l => l.Name, StringComparer.OrdinalIgnoreCase).ThenBy(l => l.Key, StringComparer.Ordinal)]
        : gym.Logbook.Lifters();

    /// <summary>Whether somebody came or went since the page of names was made.</summary>
    public bool IsStale => gym.Sharing is not null && !PageOf(Lifters).Select(l => l.Key).SequenceEqual(shown.Select(l => l.Key));

    /// <summary>The lifter of a line of the page of names that is shown.</summary>
    public Lifter Shown(int line) => shown[line];

    /// <summary>The page with the next names.</summary>
    public WhoConversation Others(string title, string told)
    {
        page++;
        return title is WhichTitle or FirstTitle or SecondTitle ? Which(title, page) : Who(told, page);
    }

    /// <summary>The page of names.</summary>
    /// <param name="told">What else is to be told under them.</param>
    /// <param name="page">Which of its pages, from 0, where there are more names than digits.</param>
    public WhoConversation Who(string told, int page = 0)
    {
        Turn(page);
        var trouble = new List<string?> { told, gym.Report, gym.Trouble };
        var lines = shown.Select(l => new WhoLine(Named(l), State(l, trouble))).ToList();
        return new WhoConversation(gym.Today.Short(), lines, string.Join(' ', trouble.Where(t => !string.IsNullOrEmpty(t)))) { Others = HasOthers, Shared = () => gym.Sharing?.Word };
    }

    /// <summary>The page of names, to choose one for something else than training alone.</summary>
    /// <param name="title">What is asked; one of the titles here.</param>
    /// <param name="page">Which of its pages, from 0.</param>
    public WhoConversation Which(string title, int page = 0)
    {
        Turn(page);
        return new("", [.. shown.Select(l => new WhoLine(Named(l), ""))], "") { Title = title, Behind = "back", Others = HasOthers };
    }

    /// <summary>The list behind the names.</summary>
    /// <param name="stick">Whether a memory stick can be had here.</param>
    public HouseholdConversation More(bool stick)
    {
        List<HouseholdChoice> offered = [];
        if (Lifters.Count < WhoConversation.Most || gym.Sharing is not null)
        {
            offered.Add(HouseholdChoice.Join);
        }

        if (Lifters.Count > 0)
        {
            offered.Add(HouseholdChoice.Change);
        }

        if (Lifters.Count > 1)
        {
            offered.Add(HouseholdChoice.Two);
        }

        if (stick)
        {
            offered.Add(HouseholdChoice.Stick);
        }

        return new HouseholdConversation([.. offered, HouseholdChoice.ShutDown]);
    }

    /// <summary>A lifter's own settings.</summary>
    public static LifterConversation Settings(Lifter lifter, LifterChange at = LifterChange.Name) => new(
        new LifterTexts(lifter.Name, lifter.Unit == MassUnit.Kilogram ? "kilograms" : "pounds", lifter.Pin is not null, lifter.Plan ?? "the gym's own", Looks.Text(lifter.Look)), at);

    /// <summary>The page for another name.</summary>
    public NameConversation Rename(Lifter lifter) => new(lifter.Name, [.. gym.Logbook.Lifters().Where(l => l.Key != lifter.Key).Select(l => l.Name)]);

    /// <summary>Keeps a lifter as changed.</summary>
    public Lifter Keep(Lifter changed)
    {
        gym.Logbook.Keep(changed);
        return changed;
    }

    /// <summary>The same in the other unit. Loads already written stay in the unit they were loaded in.</summary>
    public Lifter InTheOtherUnit(Lifter lifter) =>
        Keep(lifter with { Unit = lifter.Unit == MassUnit.Kilogram ? MassUnit.Pound : MassUnit.Kilogram });

    /// <summary>The same with the next plan of the gym's folder.</summary>
    public Lifter OnTheNextPlan(Lifter lifter) => Keep(lifter with { Plan = PlansHere.After(gym.Folders, lifter.Plan) });

    /// <summary>The same with the next look.</summary>
    public Lifter InTheNextLook(Lifter lifter) => Keep(lifter with { Look = Looks.After(lifter.Look) });

    private bool HasOthers => Lifters.Count > WhoConversation.Most;

    private void Turn(int to)
    {
        page = to * WhoConversation.Most < Lifters.Count ? to : 0;
        shown = PageOf(Lifters);
    }

    private List<Lifter> PageOf(IReadOnlyList<Lifter> all) => [.. all.Skip(page * WhoConversation.Most).Take(WhoConversation.Most)];

    // Two who are called alike are told apart by when they joined.
    private string Named(Lifter lifter) => Lifters.Count(l => l.Name == lifter.Name) > 1 ? $"{lifter.Name}, since {lifter.Joined.InZone(gym.Zone).Date.Short()}" : lifter.Name;

    private string State(Lifter lifter, List<string?> trouble)
    {
        trouble.Add(gym.TrainBy(lifter));
        if (gym.Logbook.Open(lifter.Key) is { } open)
        {
            return $"left open, {open.Date.Short()}";
        }

        if (gym.Rules is null || gym.Doubt() is not null)
        {
            return " ";
        }

        var todays = gym.TodaysPlan(lifter);
        return todays.Due.Kind switch
        {
            DueKind.Train => todays.Day?.Name ?? " ",
            DueKind.DoneToday => "done for today",
            DueKind.Away => "away",
            _ => $"next {todays.Due.Next.Short()}",
        };
    }
}
