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

    /// <summary>The first nine who joined, in that order.</summary>
    public IReadOnlyList<Lifter> Lifters => [.. gym.Logbook.Lifters().Take(WhoConversation.Most)];

    /// <summary>The page of names.</summary>
    /// <param name="told">What else is to be told under them.</param>
    public WhoConversation Who(string told)
    {
        var trouble = new List<string?> { told, gym.Report, gym.Trouble };
        var lines = Lifters.Select(l => new WhoLine(l.Name, State(l, trouble))).ToList();
        return new WhoConversation(gym.Today.Short(), lines, string.Join(' ', trouble.Where(t => !string.IsNullOrEmpty(t))));
    }

    /// <summary>The page of names, to choose whose settings are to be changed.</summary>
    public WhoConversation Which() => new("", [.. Lifters.Select(l => new WhoLine(l.Name, ""))], "") { Title = WhichTitle, Behind = "back" };

    /// <summary>The list behind the names.</summary>
    /// <param name="stick">Whether a memory stick can be had here.</param>
    public HouseholdConversation More(bool stick)
    {
        List<HouseholdChoice> offered = [];
        if (Lifters.Count < WhoConversation.Most)
        {
            offered.Add(HouseholdChoice.Join);
        }

        if (Lifters.Count > 0)
        {
            offered.Add(HouseholdChoice.Change);
        }

        if (stick)
        {
            offered.Add(HouseholdChoice.Stick);
        }

        return new HouseholdConversation([.. offered, HouseholdChoice.ShutDown]);
    }

    /// <summary>A lifter's own settings.</summary>
    public static LifterConversation Settings(Lifter lifter, LifterChange at = LifterChange.Name) => new(
        new LifterTexts(lifter.Name, lifter.Unit == MassUnit.Kilogram ? "kilograms" : "pounds", lifter.Pin is not null, lifter.Plan ?? "the gym's own"), at);

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
