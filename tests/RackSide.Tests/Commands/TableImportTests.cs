using System.Globalization;
using System.Text.RegularExpressions;
using NodaTime;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Tests.Commands;

/// <summary>Tables in: our own by the maps that docs/import.md shows, and tables of others.</summary>
[Collection(nameof(Tollbooth))]
public sealed class TableImportTests : IDisposable
{
    private static readonly string Docs = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Reference", "import.md"));

    private readonly Tollbooth gym;
    private readonly PassingFolder home = new();

    public TableImportTests(Tollbooth gym)
    {
        this.gym = gym;
        using var logbook = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 1, 18, 0));
        logbook.Keep(new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, Instant.FromUtc(2026, 11, 1, 18, 0)));
    }

    public void Dispose() => home.Dispose();

    [Fact]
    public void Our_own_tables_come_back_by_the_maps_of_the_docs()
    {
        using var tables = new PassingFolder();
        gym.On(11).RunWords("export", "--csv", tables.Path).Code.Should().Be(0);
        foreach (var (table, map) in new[] { ("sets.csv", 0), ("weigh-ins.csv", 1) })
        {
            var ran = Here().RunWords("import", Path.Combine(tables.Path, table), "--map", Map(map), "--yes");
            (ran.Code, ran.Error).Should().Be((0, ""), table);
        }

        using var again = new PassingFolder();
        Here().RunWords("export", "--csv", again.Path).Code.Should().Be(0);
        Columns(again, "weigh-ins.csv", _ => true).Should().Equal(Columns(tables, "weigh-ins.csv", _ => true));
        Columns(again, "sets.csv", Kept).Should().Equal(Columns(tables, "sets.csv", Kept));
        Session(0).Closed.Should().BeTrue();

        // Which session it was, when each set was done, what was asked for and notes are no columns of the map.
        static bool Kept(string column) => !column.StartsWith("target", StringComparison.Ordinal) && column is not ("session" or "at (UTC)" or "slot" or "note");
    }

    [Fact]
    public void A_second_time_every_line_is_known()
    {
        using var tables = new PassingFolder();
        gym.On(11).RunWords("export", "--csv", tables.Path).Code.Should().Be(0);
        var sets = Path.Combine(tables.Path, "sets.csv");
        Here().RunWords("import", sets, "--map", Map(0), "--yes").Code.Should().Be(0);
        var before = Here().Run("export").Out;

        var ran = Here().RunWords("import", sets, "--map", Map(0));

        (ran.Code, ran.Lines[^1]).Should().Be((0, "nothing was changed"));
        ran.Out.Should().Contain("all of it is here").And.Contain($"{File.ReadAllLines(sets).Length - 1} lines");
        Made(Here().Run("export").Out).Should().Be(Made(before));
    }

    [Fact]
    public void A_table_from_elsewhere_becomes_sessions_that_the_plan_goes_on_from()
    {
        var table = home.File("log.csv", "Day;Lift;Weight;Unit;Reps;How it went;Mood\n" + string.Concat(Enumerable.Repeat("02.11.2026;Squat;60,0;kg;5;;fine\n", 5)) + "02.11.2026;Bench;95;lb;8;bad;\"a\nlong day\"\n");

        var ran = Here().RunWords("import", table, "--map", Map(2), "--yes");

        (ran.Code, ran.Error).Should().Be((0, ""));
        var session = Session(0);
        (session.Date, session.Closed, session.Head.Kind).Should().Be((new LocalDate(2026, 11, 2), true, DayKind.Strength));
        session.Prescriptions.Select(p => (p.Slot, p.Exercise, p.Scheme, p.Load)).Should().Equal(
            ("squat", "back-squat", new Scheme.Fixed(5, 5), Mass.Kg(60)), ("bench-press", "bench-press", new Scheme.Fixed(1, 8), Mass.Lb(95)));
        session.Sets.Select(s => (s.Set.Number, s.FormSlipped)).Should().Equal((1, false), (2, false), (3, false), (4, false), (5, false), (1, true));
        CommandLine.In(home.Path, "2026-11-06T18:00").Run("today").Out.Should().MatchRegex("Barbell back squat +5x5 +62.5 kg", "five fives at 60 earn the step");
    }

    [Fact]
    public void Every_mistake_is_told_by_its_line_and_nothing_comes_in()
    {
        var table = home.File("log.csv", "Day;Lift;Weight;Unit;Reps;How it went\n02.11.2026;Squat;60;kg;5;\n31.11.2026;Squat;60;kg;5;\n02.11.2026;Leg thing;60;kg;5;\n02.11.2026;Squat;60;st;5;\n02.11.2026;Squat;heavy;kg;;\n02.12.2026;Squat;60;kg;many;\n02.11.2026;Squat\n");
        var before = Made(Here().Run("export").Out);

        var ran = Here().RunWords("import", table, "--map", Map(2), "--yes");

        (ran.Code, ran.Out).Should().Be((65, ""));
        ran.ErrorLines.Select(l => l.Replace("rackside: ", "", StringComparison.Ordinal)).Should().Equal(
            $"{table}:3: Day: \"31.11.2026\" is not a date; write one such as 25.11.2026",
            $"{table}:4: Lift: the map does not say which exercise \"Leg thing\" is; write it under exercises, such as Back squat: back-squat",
            $"{table}:5: Unit: \"st\" is no unit of mass; write kg or lb",
            $"{table}:6: Reps: neither reps nor seconds stand here; write one of them",
            $"{table}:6: Weight: \"heavy\" cannot be read; write a number of at most three decimals, such as 62.5",
            $"{table}:7: Day: Wed 2 Dec 2026 is yet to come; write a day that has been",
            $"{table}:7: Reps: \"many\" is not a whole number from 0 to 1000; write one such as 5",
            $"{table}:8: 2 fields stand here, and the first line has 6; put text with a separator in it in quotes",
            $"{table}:8: Reps: neither reps nor seconds stand here; write one of them");
        Made(Here().Run("export").Out).Should().Be(before);
    }

    [Theory]
    [InlineData("table: sets\ncolumns:\n  date: Day\n  exercise: Lift\n  load: Weight\n  raps: Reps\n", 3, "columns: reps or seconds is missing", "columns: load has no unit", "raps: there is no such field here; did you mean reps?")]
    [InlineData("table: swims\ncolumns:\n  date: Day\n  exercise: Lift\n  reps: Reps\n", 1, "table: \"swims\" is not a kind of table; write sets or weigh_ins")]
    [InlineData("table: sets\ncolumns:\n  date: Day\n  exercise: Lift\n  reps: Reps\nexercises:\n  Squat: back-sqaut\n", 1, "Squat: no exercise has the id \"back-sqaut\"; did you mean back-squat?")]
    public void A_mistake_in_the_map_is_told_by_its_line(string text, int mistakes, params string[] parts)
    {
        var map = home.File("map.yaml", text);

        var ran = Here().RunWords("import", home.File("log.csv", "Day,Lift,Reps\n"), "--map", map);

        ran.Code.Should().Be(65);
        ran.ErrorLines.Should().HaveCount(mistakes).And.OnlyContain(l => Regex.IsMatch(l, "map\\.yaml:\\d+: "));
        parts.Should().OnlyContain(p => ran.Error.Contains(p));
    }

    [Theory]
    [InlineData("Day,Lift\n", "log.csv:1: Reps: the table has no such column; its columns are Day, Lift")]
    [InlineData("", "log.csv: the table is empty; write the names")]
    [InlineData("Day,Lift,Reps\n2026-11-02,\"Squat,5\n", "log.csv:2: a quote is out of place")]
    public void A_table_that_does_not_fit_its_map_is_told(string text, string part)
    {
        var map = home.File("map.yaml", "table: sets\ncolumns:\n  date: Day\n  exercise: Lift\n  reps: Reps\n");

        var ran = Here().RunWords("import", home.File("log.csv", text), "--map", map);

        (ran.Code, ran.Out).Should().Be((65, ""));
        ran.ErrorLines.Should().ContainSingle().Which.Should().Contain(part);
    }

    [Fact]
    public void Sets_of_before_the_newest_session_are_refused_because_loads_follow_from_it()
    {
        using var copy = gym.Copy();
        var map = copy.File("map.yaml", "table: sets\ncolumns:\n  date: Day\n  exercise: Lift\n  reps: Reps\n  load_kg: Load\n");
        var table = copy.File("log.csv", "Day,Lift,Reps,Load\n2026-11-05,back-squat,5,40\n");

        var ran = CommandLine.In(copy.Path, "2026-11-11T18:00").RunWords("import", table, "--map", map, "--yes");

        (ran.Code, ran.Error).Should().Be((65, $"rackside: {table}:2: Thu 5 Nov 2026 is not after the newest session here, of Mon 9 Nov 2026, and this set is not in the logbook; take the line out, or bring the table in before the first session{Environment.NewLine}"));
    }

    [Fact]
    public void A_table_without_a_map_is_told_how() =>
        Here().Run("import log.csv").Should().BeEquivalentTo(new { Code = 64, Out = "" });

    private CommandLine Here() => CommandLine.In(home.Path, "2026-11-11T18:00");

    private SessionRecord Session(int index)
    {
        using var logbook = LiteLogbook.Open(home.Path, Instant.FromUtc(2026, 11, 11, 18, 0));
        return logbook.Sessions("first")[index];
    }

    /// <summary>A map as docs/import.md shows it.</summary>
    private string Map(int index) =>
        home.File(string.Create(CultureInfo.InvariantCulture, $"map-{index}.yaml"), Regex.Matches(Docs, "```yaml\n(.*?)```", RegexOptions.Singleline)[index].Groups[1].Value);

    private static string Made(string record) => Regex.Replace(record, "\"(made|rack)\": \"[^\"]*\"", "");

    private static List<string> Columns(PassingFolder folder, string table, Func<string, bool> which)
    {
        var rows = File.ReadAllLines(Path.Combine(folder.Path, table)).Select(l => l.Split(',')).ToList();
        return [.. rows.Select(r => string.Join('|', r.Where((_, i) => which(rows[0][i]))))];
    }
}
