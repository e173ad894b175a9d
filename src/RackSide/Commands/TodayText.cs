using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Progression;
using RackSide.Training.Safety;
using RackSide.Training.Schedule;
using RackSide.Visits;

namespace RackSide.Commands;

/// <summary>Today in plain lines.</summary>
internal sealed class TodayText(Gym gym, Lifter lifter, TodaysPlan todays, SessionRecord? open)
{
    /// <summary>The lines, each of at most 80 columns.</summary>
    public IEnumerable<string> Lines() =>
    [
        .. PlainText.Wrap(Head()),
        .. PlainText.Wrap($"why: {todays.Due.Why}"),
        .. open is null ? [] : PlainText.Wrap($"A session begun on {open.Date.Short()} is still open; rackside goes on with it."),
        .. todays.Prescriptions.SelectMany(Slot),
        .. todays.Day is null ? [] : Foot(todays.Day),
        "",
        .. PlainText.Wrap($"next: {todays.Due.Next.Short()}, {todays.Due.NextDay.Name}"),
    ];

    private string Head()
    {
        var what = todays.Due.Kind switch
        {
            DueKind.Train => string.Create(CultureInfo.InvariantCulture, $"{todays.Day!.Name}, about {todays.Estimate.TotalMinutes:0} min"),
            DueKind.Rest => "rest day",
            DueKind.Away => "away",
            _ => "done",
        };
        return $"{gym.Today.Short()} {gym.Today.Year}: {what}{(lifter.Name.Length > 0 ? $", for {lifter.Name}" : "")}";
    }

    private IEnumerable<string> Slot(Prescription asked)
    {
        var exercise = gym.Catalogue[asked.Exercise];
        var details = Details(asked, exercise);
        return
        [
            "",
            $"{exercise.Name,-36} {AskedText.Sets(asked),-10} {AskedText.Load(asked.Load, exercise)}".TrimEnd(),
            .. todays.StandIns.FirstOrDefault(s => s.Slot == asked.Slot && s.Instead?.Id == asked.Exercise) is { } standIn
                ? PlainText.Wrap($"stands in for {gym.Catalogue[standIn.Wanted.Id].Name.ToLowerInvariant()}: {standIn.Why}", margin: 2) : [],
            .. asked.Ramp.Count == 0 ? [] : PlainText.Wrap($"warm-up: {string.Join(", ", asked.Ramp.Select(r => $"{r.Load} x {r.Reps}"))}", margin: 2),
            .. asked.Search is { } search ? PlainText.Wrap($"finds the load: {search.First} x {search.Reps} first, heavier only while it is easy, at most {LoadSearch.MostTries} sets", margin: 2) : [],
            .. details.Length == 0 ? [] : PlainText.Wrap(details, margin: 2),
            .. PlainText.Wrap($"why ({asked.Why.Code}): {asked.Why.Line}", margin: 2),
            .. asked.Why.Advice is { } advice ? PlainText.Wrap($"advice: {advice}", margin: 2) : [],
        ];
    }

    private static string Details(Prescription asked, Exercise exercise) => string.Join("; ", new[]
    {
        exercise.OneSided ? "each side" : "",
        asked.Rest > Duration.Zero ? $"rest {AskedText.Time(asked.Rest)}" : "",
        asked.Group is { } group ? $"in turn with the others of \"{group}\", {AskedText.Time(asked.ChangeOver)} to change over" : "",
    }.Where(d => d.Length > 0));

    private IEnumerable<string> Foot(TrainingDay day)
    {
        var checks = BeforeLoading.For(day.Kind, todays.Prescriptions.Select(p => gym.Catalogue[p.Exercise]), gym.Kit);
        var needs = PlanTexts.Needs(todays);
        return
        [
            "",
            .. needs.Length == 0 ? [] : PlainText.Wrap(needs),
            .. PlainText.Wrap($"Before you begin: {string.Join("; ", checks.Select(c => c.Text))}."),
            .. PlainText.Wrap(Cautions.All[^1]),
        ];
    }
}
