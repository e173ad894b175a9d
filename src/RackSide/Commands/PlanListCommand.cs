using System.CommandLine;
using RackSide.Files;
using RackSide.Json;
using RackSide.Kiosk;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary><c>rackside plan list</c>: the plans there are to choose from, and who trains by which.</summary>
internal sealed class PlanListCommand : PrintingCommand
{
    /// <summary>The command.</summary>
    public PlanListCommand(RackSideCommand root, Surroundings around)
        : base("list", "The plans to choose from, and who trains by which.", root, around)
    {
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var shipped = Shipped(gym.Catalogue);
        List<ListedPlan> here = [.. PlansHere.Names(gym.Folders).Select(name => new ListedPlan(name, PlansHere.Read(gym.Folders, name, gym.Catalogue)))];
        var lifters = gym.Logbook.Lifters();
        return Print(
            parsed,
            [
                "Plans that come with RackSide:",
                .. shipped.Select(Line),
                .. here.Count == 0 ? [] : here.Select(Line).Prepend("Plans of this gym:"),
                .. lifters.Count == 0 ? [] : lifters.Select(l => $"  {l.Name}: {l.Plan ?? ShippedPlans.BuiltIn}").Prepend("Who trains by which:"),
                .. PlainText.Wrap($"rackside plan use NAME chooses one; its file lies in {PlansHere.Folder(gym.Folders)} then, to be changed."),
            ],
            () => new PlansJson(
                [.. shipped.Select(Json)], [.. here.Select(Json)], [.. lifters.Select(l => new PlanOfLifterJson(l.Name, l.Plan))]),
            JsonOutput.Shapes.PlansJson);
    }

    private static List<ListedPlan> Shipped(Catalogue catalogue) =>
    [
        new(ShippedPlans.BuiltIn, new(PlanFile.Default(catalogue), [])),
        .. ShippedPlans.Names.Select(name => new ListedPlan(name, new(ShippedPlans.Read(name, catalogue), []))),
    ];

    private static string Line(ListedPlan listed) => listed.Read.Value is { } plan
        ? $"  {listed.Name,-20}{plan.DaysAWeek} {(plan.DaysAWeek == 1 ? "day " : "days")} a week  {plan.Name}"
        : $"  {listed.Name,-20}has mistakes: rackside plan check tells them";

    private static PlanJson Json(ListedPlan listed) => new(listed.Name, listed.Read.Value?.Name, listed.Read.Value?.DaysAWeek);

    private sealed record ListedPlan(string Name, Reading<Plan> Read);
}
