using System.Globalization;
using NodaTime;
using RackSide.Files;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Skills;

namespace RackSide.Tests.Skills;

/// <summary>Reads ladder-table.md, which explains its own notation, and asks the planner what each row asks.</summary>
internal static class LadderTable
{
    private static readonly string[] Columns = ["ladder", "beside", "done", "next time", "asked for", "code", "why-line", "advice"];

    private static readonly Catalogue Catalogue = CatalogueFile.Read();

    /// <summary>The rows, each by its line in the file.</summary>
    public static IEnumerable<(int Line, IReadOnlyDictionary<string, string> Cells)> Rows(string markdown) =>
        from line in markdown.Split('\n').Select((text, i) => (Text: text.Trim(), Number: i + 1))
        where line.Text.StartsWith('|')
        let cells = line.Text.Trim('|').Split('|').Select(c => c.Trim()).ToArray()
        where cells.Length == Columns.Length && cells[0] != Columns[0] && !cells[0].StartsWith("--", StringComparison.Ordinal)
        select (line.Number, (IReadOnlyDictionary<string, string>)Columns.Zip(cells).ToDictionary(c => c.First, c => c.Second));

    /// <summary>What the planner asks for in a row.</summary>
    public static Prescription Ask(IReadOnlyDictionary<string, string> row)
    {
        var slot = Slot(row["ladder"]);
        var day = new TrainingDay("skills", "skills day", DayKind.Skills, [slot]);
        var kit = KitDefaults.For(MassUnit.Kilogram);
        kit = row["beside"].StartsWith("no ", StringComparison.Ordinal) ? kit with { Equipment = kit.Equipment.Except([row["beside"][3..]]).ToHashSet() } : kit;
        var lifter = new Lifter("ottoline", "Ottoline Marsh", MassUnit.Kilogram, Instant.MinValue, AvoidInverted: row["beside"] == "floor");
        return Planner.Prescriptions(day, Catalogue, kit, lifter, History(slot, row["done"]), Date(row["next time"]))[0];
    }

    /// <summary>The prescription as the table writes it: <c>plank-high 30 30 30</c>.</summary>
    public static string Words(Prescription asked) => $"{asked.Exercise} {string.Join(' ', asked.Targets)}";

    private static Slot Slot(string text)
    {
        var parts = text.Split(' ').ToList();
        var begin = parts.IndexOf("from") is var at and >= 0 ? parts[at + 1] : null;
        var ladder = Catalogue.Ladders.Single(l => l.Key == parts[0]);
        var first = ladder.Rungs[0];
        return new Slot
        {
            Key = "practice",
            Motion = Motion.CoreBrace,
            Exercises = [.. ladder.Rungs.Select(r => r.Exercise)],
            Ladder = ladder,
            BeginWith = begin,
            Rest = Duration.FromSeconds(60),
            Scheme = parts switch
            {
                [_, var span, "s", ..] => new Scheme.Accumulate(Int(span.Split('-')[0]), Int(span.Split('-')[^1])),
                [_, var total, "to", ..] => new Scheme.Total(Int(total)),
                _ => new Scheme.Hold(first.Sets, first.Low, first.High),
            },
            Progress = parts is [_, _, "to", var most, ..]
                ? new ProgressRule(ProgressKind.GrowTotal) { GrowBy = 10, UpTo = Int(most) }
                : new ProgressRule(ProgressKind.LongerHold),
        };
    }

    private static TrainingHistory History(Slot slot, string done) =>
        new(done == "-" ? [] : [.. done.Split(';', StringSplitOptions.TrimEntries).Select((day, i) => Session(slot, day, i * 100))]);

    private static SessionRecord Session(Slot slot, string text, int id)
    {
        var (head, sets) = (text.Split(": ")[0].Split(' '), text.Split(": ")[1].Split(' '));
        var (exercise, target) = (Catalogue[head[1].Split('@')[0]], Int(head[1].Split('@')[1]));
        var date = Date(head[0]);
        var begun = date.AtStartOfDayInZone(DateTimeZone.Utc).ToInstant();
        var asked = Asked(slot, exercise, target, head.Contains("play"));
        var kind = slot.Scheme switch { Scheme.Accumulate => SetKind.HeldShare, Scheme.Total => SetKind.Share, _ => exercise.Held ? SetKind.Hold : SetKind.Working };
        var facts = new List<Fact>();
        foreach (var set in sets.Where(s => s != "cut"))
        {
            var fact = new FactId("t", id + facts.Count + 1);
            facts.Add(new SetDone(fact, begun, slot.Key, exercise.Id, kind, facts.OfType<SetDone>().Count() + 1, target, Int(set.TrimEnd('~')), null));
            if (set.EndsWith('~'))
            {
                facts.Add(new FormTold(new FactId("t", id + facts.Count + 1), begun, fact, true));
            }
        }

        if (sets[^1] == "cut")
        {
            facts.Add(new SlotLeftOut(new FactId("t", id + 99), begun, slot.Key));
        }

        return new SessionRecord(Head(id, begun, date, asked), facts);
    }

    private static Prescription Asked(Slot slot, Exercise exercise, int target, bool play)
    {
        var rung = slot.Ladder!.RungOf(exercise.Id)!;
        var own = slot.Scheme is Scheme.Accumulate or Scheme.Total;
        return new Prescription
        {
            Slot = slot.Key,
            Motion = exercise.Motion,
            Exercise = exercise.Id,
            Scheme = own ? slot.Scheme : exercise.Held ? new Scheme.Hold(rung.Sets, rung.Low, rung.High) : new Scheme.Range(rung.Sets, rung.Low, rung.High),
            Targets = own ? [target] : [.. Enumerable.Repeat(target, rung.Sets)],
            Rest = slot.Rest,
            Why = new Reason(play ? SkillReasons.Play : "test", "test"),
        };
    }

    private static SessionHead Head(int id, Instant begun, LocalDate date, Prescription asked) => new()
    {
        Id = new FactId("t", id),
        Begun = begun,
        Date = date,
        Zone = "Europe/London",
        Lifter = "ottoline",
        Plan = "Tollbooth plan",
        DayKey = "skills",
        DayName = "skills day",
        Kind = DayKind.Skills,
        Prescriptions = [asked],
    };

    private static LocalDate Date(string day) => new LocalDate(2026, 10, 31).PlusDays(Int(day));

    private static int Int(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
