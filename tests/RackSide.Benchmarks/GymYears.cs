using System.Diagnostics;
using NodaTime;
using Npgsql;
using RackSide.Logbook;
using RackSide.Racks;
using RackSide.Server;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Racks;

namespace RackSide.Benchmarks;

/// <summary>
/// What a gym of ten racks costs: five years of some lifters pushed and taken by a fresh rack, then copied on the server under
/// other keys until there are as many rows as of 300 lifters, and a day's events with all that there. gym.sh starts a server for it.
/// </summary>
internal static class GymYears
{
    private const int Years = 5, AtOnce = 500;

    private static readonly Instant Now = Instant.FromUtc(2026, 11, 27, 6, 0);

    private static readonly LocalDate Today = new(2026, 11, 27);

    /// <summary>Measures, and prints lines for docs/performance.md.</summary>
    /// <param name="server">The owner's connection, whose database is empty.</param>
    /// <param name="lifters">How many lifters a rack takes whole.</param>
    /// <param name="copies">How many lifters the server is filled up to.</param>
    public static void Print(string server, int lifters, int copies)
    {
        using var gym = new Direct(new GymServer(server, null, TimeProvider.System));
        gym.Server.Prepare(null);
        var sessions = YearsOfLog.Years(Years, Today).ToList();
        List<GymEvent> events = [.. Enumerable.Range(0, lifters).SelectMany(l => EventsOf(l, sessions))];
        Tell($"{lifters} lifters, {Years} years: {events.Count} events pushed, {AtOnce} at once", () => Push(gym, events));
        var folder = Directory.CreateTempSubdirectory("rackside-gym-").FullName;
        try
        {
            using var book = LiteLogbook.Open(folder, Now);
            book.Join(gym.Identity());
            Tell($"a fresh rack takes {events.Count} events", () => new GymSync(book, gym).Run(GymSync.Many));
            Console.WriteLine($"its log: {new FileInfo(Path.Combine(folder, "log.db")).Length / 1024.0 / 1024:0.0} MiB");
            Fill(server, lifters, copies);
            Size(server);
            gym.Skipped = SkipCopies(book, server);
            ADay(gym, book, copies);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static IEnumerable<GymEvent> EventsOf(int number, IReadOnlyList<SessionRecord> sessions)
    {
        var lifter = new Lifter("first", $"Lifter {number}", MassUnit.Kilogram, Now - Duration.FromDays(2000) + Duration.FromSeconds(number));
        lifter = lifter with { Key = GymKey.Of(lifter) };
        yield return new LifterTold(new FactId($"rack{number % 10:00}", HybridClock.Reading(lifter.Joined)), lifter, LifterFields.All);
        foreach (var session in sessions)
        {
            foreach (var one in EventsOf(lifter.Key, session, id => new FactId($"rack{number % 10:00}", HybridClock.Reading(session.Head.Begun) + (id.Sequence % 65_536) + (number * 70_000L))))
            {
                yield return one;
            }
        }
    }

    private static IEnumerable<GymEvent> EventsOf(string lifter, SessionRecord session, Func<FactId, FactId> id)
    {
        var head = session.Head with { Id = id(session.Head.Id), Lifter = lifter };
        return session.Facts.Select(f => (GymEvent)new SessionFact(lifter, head.Id, f with { Id = id(f.Id) })).Prepend(new SessionStarted(head));
    }

    private static void Push(IGym gym, IEnumerable<GymEvent> events)
    {
        foreach (var batch in events.Chunk(AtOnce))
        {
            gym.Push(batch);
        }
    }

    // The rows of the lifters there are, again under other keys and racks; a rack that has read to the end never reads them.
    private static void Fill(string server, int lifters, int copies) => Tell($"filling up to {copies} lifters", () => Sql(server, $"""
        insert into rackside.event (rack, count, lifter, body)
        select rack || '-' || n, count, lifter || '-' || n, replace(body::text, lifter, lifter || '-' || n)::json
        from rackside.event, generate_series(1, {(copies / lifters) - 1}) n
        """));

    private static void Size(string server)
    {
        Sql(server, "vacuum analyze rackside.event");
        Console.WriteLine($"rows {Ask(server, "select count(*) from rackside.event")}, table and indexes {Ask(server, "select pg_size_pretty(pg_total_relation_size('rackside.event'))")}, "
            + $"table {Ask(server, "select pg_size_pretty(pg_table_size('rackside.event'))")}, a body {Ask(server, "select round(avg(length(body::text))) from (select body from rackside.event limit 100000) as sample")} bytes");
    }

    // No rack need hold the copies, so this one's place is set behind them.
    private static (long, FactId?) SkipCopies(LiteLogbook book, string server)
    {
        var last = (long)Ask(server, "select max(position) from rackside.event")!;
        book.Pull([], last);
        return (last, book.Share.Anchor);
    }

    private static void ADay(Direct gym, LiteLogbook book, int lifters)
    {
        var session = YearsOfLog.Years(1, Today.PlusDays(1)).Last();
        var many = lifters * 3 / 7;
        List<GymEvent> day = [.. Enumerable.Range(0, many).SelectMany(n => EventsOf($"first-day-{n}", session, id => new FactId($"rack{n % 10:00}", HybridClock.Reading(Now) + (id.Sequence % 65_536) + (n * 70_000L))))];
        var own = day.Count / 10;
        Tell($"one rack sends its part of a day, {own} events", () => Push(gym, day.Take(own)));
        Push(gym, day.Skip(own));
        Tell($"a rack takes a day of {many} sessions, {day.Count} events, {GymSync.Some} at once", () => new GymSync(book, gym).Run(GymSync.Some));
        Tell("asking once more, with nothing new", () => new GymSync(book, gym).Run(GymSync.Some));
    }

    private static void Tell(string what, Action measured)
    {
        var clock = Stopwatch.StartNew();
        measured();
        Console.WriteLine($"{what}: {clock.Elapsed.TotalSeconds:0.00} s");
    }

    private static void Sql(string server, string sql)
    {
        using var connection = new NpgsqlConnection(server);
        connection.Open();
        using var command = new NpgsqlCommand(sql, connection) { CommandTimeout = 0 };
        command.ExecuteNonQuery();
    }

    private static object? Ask(string server, string sql)
    {
        using var connection = new NpgsqlConnection(server);
        connection.Open();
        using var command = new NpgsqlCommand(sql, connection) { CommandTimeout = 0 };
        return command.ExecuteScalar();
    }

    private sealed class Direct(GymServer server) : IGym, IDisposable
    {
        public GymServer Server => server;

        public (long Position, FactId? Anchor) Skipped { get; set; }

        public string Identity() => server.Gym();

        public void Push(IReadOnlyList<GymEvent> events) => server.Push([.. events.Select(Of)]);

        public void Erase(LifterErased erased) => server.Erase(Of(erased));

        public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) => server.Pull(after, most);

        public FactId? At(long position) => position == Skipped.Position ? Skipped.Anchor : server.At(position) is var (rack, count) ? new FactId(rack, count) : null;

        public void Dispose() => server.Dispose();

        private static Sealed Of(GymEvent one) => new(one.Id.Rack, one.Id.Sequence, one.Lifter, GymEventText.Write(one));
    }
}
