using NodaTime;
using RackSide.Exchange;
using RackSide.Files;
using RackSide.Logbook;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary>A table that was read, without what is in the logbook already.</summary>
/// <param name="name">Its file.</param>
/// <param name="sets">The sets that are new.</param>
/// <param name="weights">The body weights that are new.</param>
/// <param name="known">How many lines tell what is here already.</param>
internal sealed class TableImport(string name, IReadOnlyList<SetRow> sets, IReadOnlyList<WeightRow> weights, int known)
{
    private const int MostMegabytes = 50, MostTold = 40;

    /// <summary>Whether all of it is here.</summary>
    public bool AddsNothing => sets.Count + weights.Count == 0;

    /// <summary>Reads a table by its map.</summary>
    /// <exception cref="Refusal">There are mistakes in one of the two; all of them are told.</exception>
    public static TableImport Read(Gym gym, LogbookSnapshot here, string name, string mapName, string? who)
    {
        var map = Good(TableMapReader.ReadFrom(mapName, gym.Catalogue), mapName);
        var usual = map.Columns.ContainsKey("lifter") ? null : gym.Joined(who);
        return Good(TextFile.Read(name, text => Read(gym, here, name, text, map, usual), MostMegabytes), name);
    }

    /// <summary>What it would add.</summary>
    public IEnumerable<string> Lines() =>
    [
        .. AddsNothing ? [$"{name}: importing it would add nothing: all of it is here"] : PlainText.Wrap($"importing {name} would add: {Added()}"),
        .. known == 0 ? [] : PlainText.Wrap($"here already, and left as they are: {CountsText.Count(known, "line")}"),
    ];

    /// <summary>The logbook with it.</summary>
    public LogbookSnapshot Whole(Gym gym, LogbookSnapshot here)
    {
        var sessions = new TableSessions(
            gym.Plan, gym.Zone.Id, gym.Logbook.NextId, date => gym.Zone.AtLeniently(date.At(LocalTime.Noon)).ToInstant(), gym.Clock.GetCurrentInstant());
        return here.With(sessions.Of(sets), weights.Select(w => (gym.Logbook.NextId(), w.Lifter.Key, new WeighIn(w.Date, w.Weight))));
    }

    private string Added() => weights.Count > 0
        ? CountsText.Count(weights.Count, "weigh-in")
        : $"{CountsText.Count(sets.Select(s => (s.Lifter.Key, s.Date)).Distinct().Count(), "session")} with {CountsText.Count(sets.Count, "set")}, {sets.Min(s => s.Date).Shown()} to {sets.Max(s => s.Date).Shown()}";

    private static Reading<TableImport> Read(Gym gym, LogbookSnapshot here, string name, string text, TableMap map, Lifter? usual)
    {
        var mistakes = new MistakeList(name);
        var lines = TableText.Read(text, map.Separator, map.Columns.Values, mistakes);
        var rows = new TableRows(map, gym.Catalogue, who => Named(here, who), usual, gym.Today, mistakes);
        return mistakes.Close(map.WeighIns ? Weights(here, name, rows.Weights(lines)) : Sets(here, name, rows.Sets(lines), mistakes));
    }

    private static TableImport Weights(LogbookSnapshot here, string name, IReadOnlyList<WeightRow> rows)
    {
        var known = rows.Select(r => r.Lifter.Key).Distinct().SelectMany(key => here.WeighIns(key).Select(w => (key, w.Date))).ToHashSet();
        List<WeightRow> fresh = [.. rows.Where(r => known.Add((r.Lifter.Key, r.Date)))];
        return new TableImport(name, [], fresh, rows.Count - fresh.Count);
    }

    private static TableImport Sets(LogbookSnapshot here, string name, IReadOnlyList<SetRow> rows, MistakeList mistakes)
    {
        List<SetRow> numbered = [.. Numbered(rows)];
        List<SetRow> fresh = [.. numbered.GroupBy(r => r.Lifter.Key).SelectMany(own => Fresh(here.Sessions(own.Key), [.. own]))];
        foreach (var late in fresh)
        {
            if (here.Sessions(late.Lifter.Key).Select(s => (LocalDate?)s.Date).Max() is { } newest && newest >= late.Date)
            {
                mistakes.Add(late.Line, "", $"{late.Date.Shown()} is not after the newest session here, of {newest.Shown()}, and this set is not in the logbook", "take the line out, or bring the table in before the first session");
            }
        }

        return new TableImport(name, fresh, [], numbered.Count - fresh.Count);
    }

    private static IEnumerable<SetRow> Numbered(IEnumerable<SetRow> rows)
    {
        var counts = new Dictionary<(string, LocalDate, string, SetKind, Side?), int>();
        foreach (var row in rows)
        {
            var of = (row.Lifter.Key, row.Date, row.Exercise.Id, row.Kind, row.Side);
            counts[of] = counts.GetValueOrDefault(of) + 1;
            yield return row.Number is null ? row with { Number = counts[of] } : row;
        }
    }

    // As many as are here are known; a left and a right, or two slots of one exercise, may well be alike.
    private static IEnumerable<SetRow> Fresh(IReadOnlyList<SessionRecord> sessions, List<SetRow> rows)
    {
        var known = sessions.SelectMany(s => s.Sets.Select(r => Key(s.Date, r.Set.Exercise, r.Set.Kind, r.Set.Number, r.Set.Side, r.Set.Done, r.Set.Load)))
            .GroupBy(k => k).ToDictionary(k => k.Key, k => k.Count());
        foreach (var row in rows)
        {
            var key = Key(row.Date, row.Exercise.Id, row.Kind, row.Number!.Value, row.Side, row.Done, row.Load);
            var left = known.GetValueOrDefault(key);
            known[key] = left - 1;
            if (left <= 0)
            {
                yield return row;
            }
        }
    }

    private static (LocalDate, string, SetKind, int, Side?, int, Mass?) Key(LocalDate date, string exercise, SetKind kind, int number, Side? side, int done, Mass? load) =>
        (date, exercise, kind, number, side, done, load);

    private static Lifter? Named(LogbookSnapshot here, string who) =>
        here.Lifters().FirstOrDefault(l => l.Key == who || string.Equals(l.Name, who, StringComparison.OrdinalIgnoreCase));

    private static T Good<T>(Reading<T> reading, string file)
        where T : class => reading.Value ?? throw new Refusal(File.Exists(file) ? ExitCode.Data : ExitCode.NoInput, string.Join(Environment.NewLine, Told(reading.Mistakes)));

    private static IEnumerable<string> Told(IReadOnlyList<Mistake> mistakes) =>
        [.. mistakes.Take(MostTold).Select(m => m.ToString()), .. mistakes.Count > MostTold ? [$"and {mistakes.Count - MostTold} more like these"] : Array.Empty<string>()];
}
