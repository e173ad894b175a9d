using RackSide.Training.Measures;
using RackSide.Training.Safety;

namespace RackSide.Pages.SetUps;

/// <summary>What was set up, and where it can be changed.</summary>
internal static class DonePage
{
    public static TextPage View(SetUpState state, string kitFile)
    {
        var answers = SetUpAnswers.From(state);
        return new TextPage(SetUpHints.Title("done"), state.Joining ? [$"{answers.Name} trains here now, in {answers.MassUnit.Symbol()}.", Advice(state, answers)] : [
            $"{answers.Name} trains on {string.Join(", ", answers.TrainingDays.Select(DaysPage.Short))}.",
            $"Bar: {answers.Bar.Mass}. Plates, in pairs: {Plates(answers)}.",
            $"Other kit: {OtherKit(answers)}.",
            Advice(state, answers),
            $"Change it later in {kitFile}",
        ])
        {
            Place = SetUpHints.Place(state),
            MovedOn = state.Line,
            Hints = [new("ENTER", "begin"), SetUpHints.Back, SetUpHints.StopSigns],
        };
    }

    public static SetUpTurn Press(SetUpState state, KeyPress key) =>
        key.IsAccept() ? new(state.GoOn()) : SetUpHints.ReadOn(state, key);

    private static string Plates(SetUpAnswers answers) => answers.Plates.Any(p => p.Pairs > 0)
        ? string.Join(", ", answers.Plates.Where(p => p.Pairs > 0).Select(p => p.Pairs == 1 ? p.Mass.Number : $"{p.Pairs} x {p.Mass.Number}"))
            + $" {answers.MassUnit.Symbol()}"
        : "none";

    private static string OtherKit(SetUpAnswers answers) =>
        answers.OtherKit.Count == 0 ? "none" : string.Join(", ", answers.OtherKit);

    private static string Advice(SetUpState state, SetUpAnswers answers) =>
        Screening.Sentence(Screening.Outcome(state.Yes)) + (answers.AvoidInverted ? " Floor work stands in for head-down holds." : "");
}
