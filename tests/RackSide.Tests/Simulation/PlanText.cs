using System.Globalization;
using RackSide.Training.History;
using RackSide.Training.Planning;

namespace RackSide.Simulation;

/// <summary>All of a day's plan in one text, so that two plans can be held against each other.</summary>
internal static class PlanText
{
    public static string Of(TodaysPlan plan) => string.Join('\n',
    [
        $"{plan.Due.Kind} {plan.Due.Why} {plan.Due.Next} {plan.Due.NextDay.Key} {plan.Day?.Key} {plan.Estimate}",
        .. plan.Prescriptions.Select(Of),
        .. plan.LeftOut,
        string.Join(' ', plan.PlatesNeeded),
    ]);

    private static string Of(Prescription p) => string.Create(
        CultureInfo.InvariantCulture,
        $"{p.Slot} {p.Exercise} {p.Scheme.Text} {string.Join(',', p.Targets)} {p.Load} [{string.Join(' ', p.Ramp)}] {p.Search?.First} {p.Why.Code} {p.Why.Line} {p.Why.Advice} {string.Join(' ', p.Why.Inputs)}");
}
