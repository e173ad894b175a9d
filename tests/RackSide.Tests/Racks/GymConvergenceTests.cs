using CsCheck;
using NodaTime;
using RackSide.Racks;
using RackSide.Server;
using RackSide.Training.History;
using RackSide.Training.Racks;

namespace RackSide.Tests.Racks;

/// <summary>
/// Three racks live by themselves for a while, over lines that fail, with clocks that are hours off, and then all lines are good:
/// every rack has the same, nothing told is lost and nothing is there twice.
/// </summary>
[Collection(nameof(PostgresServer))]
public class GymConvergenceTests(PostgresServer server)
{
    private static readonly bool IsLong = Environment.GetEnvironmentVariable("RACKSIDE_LONG_RUN") == "1";

    [Fact]
    public void Whatever_happens_in_whatever_order_all_racks_end_with_the_same() =>
        Gen.Int.Sample(seed => Lives(seed, new StoredGym()), iter: IsLong ? 10_000 : 180, threads: 2);

    [PostgresFact]
    public void The_same_through_the_real_server()
    {
        var databases = 0;
        Gen.Int.Sample(seed =>
        {
            var database = server.NewDatabase();
            using var owner = new GymServer(server.To(database, PostgresServer.Owner), PostgresServer.OwnerPassword, TimeProvider.System);
            owner.Prepare(PostgresServer.Rack);
            using var gym = new ServerGym(new GymServer(server.To(database), PostgresServer.RackPassword, TimeProvider.System));
            Lives(seed, new Named(gym));
            databases++;
        }, iter: IsLong ? 200 : 20, threads: 1);
        databases.Should().BeGreaterThanOrEqualTo(20);
    }

    private static void Lives(int seed, IGym gym)
    {
        var chance = new Random(seed);
        var start = Instant.FromUtc(2026, 11, 2, 7, 0);
        List<RackLife> racks = [];
        try
        {
            foreach (var first in new[] { "Ottoline Marsh", "Bram Okafor-Lind", null })
            {
                racks.Add(new RackLife(chance, start, Duration.FromHours(chance.Next(-9, 10)), first) { Gym = new BadLine(gym, chance) });
            }

            racks.ForEach(r => r.Join());
            Live(chance, racks);
            Settle(racks);
            Check(seed, racks, gym);
        }
        finally
        {
            racks.ForEach(r => r.Dispose());
        }
    }

    private static void Live(Random chance, List<RackLife> racks)
    {
        // One of them has no network for a month.
        var away = racks[chance.Next(3)];
        for (var turn = 0; turn < 70; turn++)
        {
            var time = turn == 30 ? Duration.FromDays(30) : Duration.FromMinutes(chance.Next(40));
            racks.ForEach(r => r.Pass(time));
            var rack = racks[chance.Next(3)];
            switch (chance.Next(8))
            {
                case 0 or 1 when rack != away || turn > 55:
                    rack.Exchange();
                    break;
                case 2 when chance.Next(6) == 0:
                    rack.Reopen();
                    break;
                default:
                    rack.DoSomething();
                    break;
            }
        }
    }

    private static void Settle(List<RackLife> racks)
    {
        racks.ForEach(r => r.Gym.Bad = false);
        for (var round = 0; round < 2; round++)
        {
            racks.ForEach(r => r.Exchange().Should().BeTrue());
        }
    }

    private static void Check(int seed, List<RackLife> racks, IGym gym)
    {
        var everything = gym.Pull(0, int.MaxValue).Select(e => Logbook.GymEventText.Read(e.Line)).ToList();
        everything.Select(e => e.Id).Should().OnlyHaveUniqueItems();
        var fold = new GymFold(everything);
        foreach (var rack in racks)
        {
            rack.Shows().Should().Be(racks[0].Shows(), $"seed {seed}");
            rack.Book.Share.Waits.Should().BeFalse();
            rack.Book.Lifters().Select(l => l.ToString()).Should().BeEquivalentTo(fold.Lifters.Select(l => l.ToString()), $"seed {seed}");
            foreach (var lifter in fold.Lifters)
            {
                rack.Book.Sessions(lifter.Key).Select(Text).Should().Equal(fold.Sessions(lifter.Key).Select(Text), $"seed {seed}");
                rack.Book.Told(lifter.Key).Should().Equal(fold.Told(lifter.Key), $"seed {seed}");
            }

            rack.Told.Where(id => !fold.Erased.Contains(rack.Whose[id])).Should().BeSubsetOf(everything.Select(e => e.Id), $"nothing told is lost, seed {seed}");
        }

        racks.Where(r => r.Book.HoldsErased).ToList().ForEach(r => r.Book.EraseErased());
        racks.ForEach(r => r.Book.HoldsErased.Should().BeFalse());
        racks.ForEach(r => r.Shows().Should().Be(racks[0].Shows(), $"seed {seed}"));
    }

    private static string Text(SessionRecord session) => $"{session.Head.Id} {string.Join(" | ", session.Facts)}";

    private sealed class Named(IGym gym) : IGym
    {
        public string Identity() => gym.Identity() is { Length: > 0 } ? "the-tollbooth" : "";

        public void Push(IReadOnlyList<GymEvent> events) => gym.Push(events);

        public void Erase(LifterErased erased) => gym.Erase(erased);

        public IReadOnlyList<(long Position, string Line)> Pull(long after, int most) => gym.Pull(after, most);

        public FactId? At(long position) => gym.At(position);
    }
}
