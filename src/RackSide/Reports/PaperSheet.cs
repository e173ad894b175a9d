using System.Xml.Linq;
using RackSide.Commands;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Planning;
using RackSide.Training.Schedule;
using static RackSide.Reports.Html;

namespace RackSide.Reports;

/// <summary>A training day for pen and paper, in case the power is out: what to load, and a box for each set.</summary>
internal static class PaperSheet
{
    /// <summary>The page.</summary>
    /// <param name="lifter">Who trains.</param>
    /// <param name="plan">What the day asks for.</param>
    /// <param name="date">The day.</param>
    /// <param name="catalogue">All exercises.</param>
    /// <param name="kit">What the gym owns.</param>
    public static string Of(Lifter lifter, TodaysPlan plan, NodaTime.LocalDate date, Catalogue catalogue, GymKit kit)
    {
        var loads = new KitLoads(kit);
        return Page(
            $"{lifter.Name}, {date.Short()}",
            E("h1", $"{plan.Day!.Name}: {lifter.Name}, {date.Short()} {date.Year}"),
            E("p", "Write the good reps (or seconds) into each box; a set whose form slipped gets a ring around it. Stop on chest pain, dizziness, or sharp pain in a joint."),
            E("table",
                E("thead", E("tr", E("th", "exercise"), E("th", "warm-up"), E("th", "working sets"), E("th", "done"))),
                E("tbody", plan.Prescriptions.Select(p => Row(p, catalogue[p.Exercise], loads)))),
            E("h2", "Afterwards"),
            E("p", $"body weight  ", Box(), $"   written into RackSide with: rackside enter {NodaTime.Text.LocalDatePattern.Iso.Format(date)}"));
    }

    private static XElement Row(Prescription asked, Exercise exercise, KitLoads loads) => E(
        "tr",
        E("td", exercise.Name, E("br"), E("span", A("class", "small"), exercise.Cues.SetUp)),
        E("td", A("class", "sets"), asked.Ramp.Select(r => (object)E("p", $"{r.Load} x {r.Reps}"))),
        E("td", A("class", "sets"), $"{AskedText.Sets(asked)} {AskedText.Load(asked.Load, exercise)}", Plates(asked, exercise, loads), E("br"), E("span", A("class", "small"), $"rest {AskedText.Time(asked.Rest)}")),
        E("td", A("class", "sets"), Enumerable.Range(0, Math.Max(1, asked.Targets.Count)).Select(_ => Box())));

    private static object[] Plates(Prescription asked, Exercise exercise, KitLoads loads) =>
        exercise.LoadType == LoadType.Barbell && asked.Load is { } load && loads.StackFor(load) is { Side.Count: > 0 } stack
            ? [E("br"), E("span", A("class", "small"), $"each side: {string.Join(" + ", stack.Side.Select(s => s.Number))}")]
            : [];

    private static XElement Box() => E("span", A("class", "box"));
}
