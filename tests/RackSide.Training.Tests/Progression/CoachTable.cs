using System.Globalization;
using NodaTime;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Kit;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Tests.Schedule;
using static RackSide.Training.Tests.Progression.Lifting;

namespace RackSide.Training.Tests.Progression;

/// <summary>Reads coach-table.md, which explains its own notation, and asks the planner what each row asks.</summary>
internal static class CoachTable
{
    private static readonly string[] Columns = ["lift", "plan", "done", "beside", "next time", "asked for", "code", "why-line", "advice"];

    /// <summary>The rows, each by its line in the file.</summary>
    public static IEnumerable<(int Line, IReadOnlyDictionary<string, string> Cells)> Rows(string markdown) =>
        from line in markdown.Split('\n').Select((text, i) => (Text: text.Trim(), Number: i + 1))
        where line.Text.StartsWith('|')
        let cells = line.Text.Trim('|').Split('|').Select(c => c.Trim().Trim('`')).ToArray()
        where cells.Length == Columns.Length && cells[0] != Columns[0] && !cells[0].StartsWith("--", StringComparison.Ordinal)
        select (line.Number, (IReadOnlyDictionary<string, string>)Columns.Zip(cells).ToDictionary(c => c.First, c => c.Second));

    /// <summary>What the planner asks for in a row: the lift's prescription on a strength day that has the lift beside it too.</summary>
    public static Prescription Ask(IReadOnlyDictionary<string, string> row)
    {
        var (exercise, kit) = Lift(row["lift"]);
        var slot = Planned(exercise, row["plan"]);
        var book = new Book();
        book.Read(slot, exercise, row["done"]);
        List<Slot> slots = [slot];
        if (row["beside"].Length > 0)
        {
            var other = Lift(row["beside"].Split(' ')[0]).Exercise;
            slots.Add(Planned(other, "3x6-12"));
            book.Read(slots[1], other, row["beside"][(row["beside"].IndexOf(' ') + 1)..]);
        }

        var day = new TrainingDay("strength", "strength day", DayKind.Strength, slots);
        var catalogue = new Catalogue(Known);
        return Planner.Prescriptions(day, catalogue, kit, Planning.Tollbooth.Ottoline, book.History(), Weeks.Date(row["next time"]))[0];
    }

    /// <summary>The prescription as the table writes it: <c>60 kg: 5 5 5 5 5</c>.</summary>
    public static string Words(Prescription asked) => $"{(asked.Load is { } load ? $"{load}: " : "")}{string.Join(' ', asked.Targets)}";

    private static IReadOnlyList<Exercise> Known { get; } = [Squat, Press, Curl, HelpedChin, ChinUp, PushUp, Plank, Goblet, AirSquat, Bench];

    private static Exercise Goblet => Of("goblet-squat", Motion.Squat, LoadType.DumbbellSingle);

    private static Exercise AirSquat => Of("air-squat", Motion.Squat, LoadType.Bodyweight);

    private static Exercise Bench => Of("bench-press", Motion.HorizontalPush, LoadType.Barbell);

    private static (Exercise Exercise, GymKit Kit) Lift(string text)
    {
        var words = text.Split(' ');
        var exercise = words[0] switch
        {
            "squat" => Squat,
            "press" => Press,
            "bench" => Bench,
            "curl" => Curl,
            "helped" => HelpedChin,
            "hung" => ChinUp,
            "push-up" => PushUp,
            "plank" => Plank,
            "goblet" => Goblet,
            "air-squat" => AirSquat,
            _ => throw new ArgumentException($"no lift '{text}'"),
        };
        return (exercise, words.ElementAtOrDefault(1) switch
        {
            null => Garage,
            "lb" => KitDefaults.For(MassUnit.Pound),
            "1kg" => Garage with { Plates = [.. Garage.Plates, new PlatePairs(Mass.Kg(1), 1)] },
            var other => throw new ArgumentException($"no kit '{other}'"),
        });
    }

    private static Slot Planned(Exercise exercise, string text)
    {
        var parts = text.Split(',', StringSplitOptions.TrimEntries);
        var slot = Slot(exercise, Scheme(parts[0])) with { Rest = Duration.FromMinutes(2) };
        return parts.Skip(1).Aggregate(slot, (s, option) => s with { Progress = With(s.Progress, option) });
    }

    private static Scheme Scheme(string text) => text.Split(' ') switch
    {
        [var total, "in", "all"] => new Scheme.Total(Int(total)),
        [var hold, "s"] when Numbers(hold) is [var sets, var low, var high] => new Scheme.Hold(sets, low, high),
        [var reps] when Numbers(reps) is [var sets, var one] => new Scheme.Fixed(sets, one),
        [var range] when Numbers(range) is [var sets, var low, var high] => new Scheme.Range(sets, low, high),
        _ => throw new ArgumentException($"no scheme '{text}'"),
    };

    private static ProgressRule With(ProgressRule rule, string option) => option.Split(' ') switch
    {
        ["2", "for", "2"] => rule with { Kind = ProgressKind.TwoForTwo },
        ["big", "steps"] => rule with { RepsFirst = false },
        ["grow", var by, "to", var most] => rule with { Kind = ProgressKind.GrowTotal, GrowBy = Int(by), UpTo = Int(most) },
        ["step", var step, "kg"] => rule with { Step = Mass.Kg(NumberEntry.Parse(step)!.Value) },
        [var misses, "misses", var off, "%"] => rule with { MissesBeforeLighter = Int(misses), LighterPercent = Int(off) },
        _ => throw new ArgumentException($"no option '{option}'"),
    };

    private static int[] Numbers(string text) => [.. text.Split('x', '-').Select(Int)];

    private static int Int(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>The logbook that a row tells.</summary>
    private sealed class Book
    {
        private readonly List<SessionRecord> sessions = [];
        private readonly List<Fact> told = [];
        private long sequence;

        public TrainingHistory History() => new([.. sessions.OrderBy(s => s.Head.Begun)], told);

        public void Read(Slot slot, Exercise exercise, string text)
        {
            foreach (var entry in text == "-" ? [] : text.Split(';', StringSplitOptions.TrimEntries))
            {
                Read(slot, exercise, entry.Split(' '), entry);
            }
        }

        private void Read(Slot slot, Exercise exercise, string[] words, string entry)
        {
            switch (words)
            {
                case ["sore", .. var day]:
                    var on = Weeks.Date(string.Join(' ', day));
                    told.Add(new SoreTold(Next(), At(on, 8), on, exercise.Motion));
                    break;
                case ["known", var set, .. var day]:
                    var (load, reps) = (set.Split('x')[0], set.Split('x')[1]);
                    told.Add(new SetKnown(Next(), At(Weeks.Date(string.Join(' ', day)), 8), Weeks.Date(string.Join(' ', day)), exercise.Id, Int(reps), Mass.Kg(NumberEntry.Parse(load)!.Value)));
                    break;
                case ["ill", var fromDay, var from, "to", var toDay, var to]:
                    var first = Weeks.Date($"{fromDay} {from}");
                    told.Add(new AwayTold(Next(), At(first, 8), first, Weeks.Date($"{toDay} {to}"), AwayFor.Illness));
                    break;
                case ["ill", "from", .. var since]:
                    told.Add(new AwayTold(Next(), At(Weeks.Date(string.Join(' ', since)), 8), Weeks.Date(string.Join(' ', since)), null, AwayFor.Illness));
                    break;
                case ["by", var other, ..]:
                    Add(Lift(other).Exercise, slot, entry[(entry.IndexOf(other, StringComparison.Ordinal) + other.Length + 1)..], DayKind.Strength, false);
                    break;
                case ["skills", var other, ..]:
                    Add(Lift(other).Exercise, slot, entry[(entry.IndexOf(other, StringComparison.Ordinal) + other.Length + 1)..], DayKind.Skills, false);
                    break;
                case ["light", ..]:
                    Add(exercise, slot, entry["light ".Length..], DayKind.Strength, light: true);
                    break;
                default:
                    Add(exercise, slot, entry, DayKind.Strength, light: false);
                    break;
            }
        }

        private void Add(Exercise exercise, Slot slot, string text, DayKind kind, bool light)
        {
            var done = Past(slot, exercise, text)[0];
            var asked = done.Asked with { Motion = exercise.Motion, Why = new Reason(light ? "light-week" : "test", "test") };
            var begun = At(done.Date, 18);
            var head = new SessionHead
            {
                Id = Next(),
                Begun = begun,
                Date = done.Date,
                Zone = "Europe/London",
                Lifter = "ottoline",
                Plan = "a plan",
                DayKey = kind == DayKind.Strength ? "strength" : "skills",
                DayName = "a day",
                Kind = kind,
                Prescriptions = [asked],
            };
            sessions.Add(new SessionRecord(head, [.. done.Sets.SelectMany(s => Facts(s, asked.Slot, begun)), .. Left(done, begun), new SessionClosed(Next(), begun)]));
        }

        private IEnumerable<Fact> Facts(SetResult set, string slot, Instant at)
        {
            var fact = set.Set with { Id = Next(), At = at, Slot = slot };
            yield return fact;
            if (set.FormSlipped)
            {
                yield return new FormTold(Next(), at, fact.Id, Slipped: true);
            }
        }

        private IEnumerable<Fact> Left(Performance done, Instant at) => done.CutShort ? [new SlotLeftOut(Next(), at, done.Asked.Slot)] : [];

        private FactId Next() => new("test", ++sequence);

        private static Instant At(LocalDate date, int hour) => date.At(new LocalTime(hour, 0)).InUtc().ToInstant();
    }
}
