using System.Diagnostics;
using RackSide.Tests.Commands;

namespace RackSide.Tests.Racks;

/// <summary>The commands against a real server, through the program that speaks to it; racks are processes of their own.</summary>
[Collection(nameof(PostgresServer))]
public class GymCommandTests(PostgresServer server)
{
    private const string Monday = "2026-11-02T18:00", FiveHoursBehind = "2026-11-02T13:00", NextMonth = "2026-12-04T18:00";

    [PostgresFact]
    public void A_rack_joins_sends_what_it_has_and_a_second_one_has_it_too()
    {
        var database = Prepared();
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk(Monday);
        one.SetUp("Ottoline Marsh");
        one.Rackside.Run("weigh 72.4").Error.Should().BeEmpty();

        var joined = Join(one, database);
        Join(two, database);

        (joined.Code, joined.Error).Should().Be((0, ""));
        two.Rackside.Run("lifters").Out.Should().StartWith("Ottoline Marsh");
        two.Shows().Should().Be(one.Shows()).And.Contain("72.4 kg");
        one.Rackside.Run("gym status").Lines.Should().Contain("nothing waits to be sent");
        one.Rackside.Run("gym sync").Lines.Should().Equal("sent 0, taken 0; nothing waits");
    }

    [PostgresFact]
    public void Three_racks_as_three_processes_a_server_that_stops_lines_that_are_cut_and_a_month_away_end_with_the_same()
    {
        var database = Prepared();
        using var proxy = new CuttingProxy(server.Port);
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk(FiveHoursBehind);
        using var three = new RackOnDisk(NextMonth);
        RackOnDisk[] racks = [one, two, three];
        one.SetUp("Ottoline Marsh");
        two.SetUp("Bram Okafor-Lind");
        three.SetUp("Juno Petrov");
        foreach (var rack in racks)
        {
            Join(rack, database, proxy.Port).Error.Should().BeEmpty();
        }

        Together(racks).Should().OnlyContain(ran => ran.Code == 0);

        // The third has no network for the rest of the month; the others' lines are cut in the middle of what they send and get.
        one.Train("Ottoline Marsh", sets: 150);
        two.Train("Ottoline Marsh", sets: 40, closed: false);
        three.Train("Ottoline Marsh", sets: 90, closed: false);
        for (var at = 4_000; proxy.Cuts < 4 && at < 60_000; at += 5_000)
        {
            proxy.CutAfter = at % 2_000 == 0 ? (at, int.MaxValue) : (int.MaxValue, at);
            Together([one, two]);
        }

        proxy.CutAfter = null;
        proxy.Cuts.Should().BeGreaterThanOrEqualTo(4);
        server.Stop();
        Together(racks).Should().OnlyContain(ran => ran.Code == 69 && ran.Error.Contains("cannot be reached"));
        three.Run("gym", "status").Lines.Should().Contain("91 events wait to be sent");
        server.Start();

        Together(racks);
        Together(racks).Should().OnlyContain(ran => ran.Code == 0);

        one.Shows().Should().Contain("open beside another");
        racks.Should().OnlyContain(rack => rack.Shows() == one.Shows());
        server.Ask(database, "select count(*) from rackside.event").Should().Be(3L + (1 + 150 + 1) + (1 + 40) + (1 + 90), "each was told once, and is there once");
        one.Run("gym", "status").Out.ReplaceLineEndings(" ").Should().Contain("Ottoline Marsh has 2 sessions open");
    }

    [PostgresFact]
    public void An_erasure_reaches_the_server_every_rack_and_a_late_one_that_still_has_something_to_send()
    {
        var database = Prepared();
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk(Monday);
        using var late = new RackOnDisk(Monday);
        one.SetUp("Ottoline Marsh");
        foreach (var rack in new[] { one, two, late })
        {
            Join(rack, database).Error.Should().BeEmpty();
        }

        late.Train("Ottoline Marsh", sets: 3);
        two.Rackside.Run("backup").Code.Should().Be(0);
        two.FilesThatHold("Ottoline").Should().Contain("log.db").And.Contain(f => f.StartsWith("backups"));

        one.Rackside.Answering("y").Run("erase Ottoline").Code.Should().Be(0);
        one.Rackside.Run("gym sync").Lines.Should().Equal("sent 1, taken 1; nothing waits");
        two.Rackside.Run("gym sync").Error.Should().BeEmpty();
        late.Rackside.Run("gym sync").Error.Should().BeEmpty();

        foreach (var rack in new[] { one, two, late })
        {
            rack.FilesThatHold("Ottoline").Should().BeEmpty();
            rack.Shows().Should().BeEmpty();
        }

        server.Ask(database, "select string_agg(body ->> 'is', ' ') from rackside.event").Should().Be("erased");
        server.Ask(database, "select count(*) from rackside.event where body::text like '%Ottoline%'").Should().Be(0L);
    }

    [PostgresFact]
    public void Two_of_one_name_are_not_made_one()
    {
        var database = Prepared();
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk("2026-11-02T18:01");
        one.SetUp("Ottoline Marsh");
        two.SetUp("Ottoline Marsh");
        Join(one, database);

        Join(two, database).Out.ReplaceLineEndings(" ").Should().Contain("2 lifters are called Ottoline Marsh; they are kept apart");

        two.Rackside.Run("gym status").Out.ReplaceLineEndings(" ").Should().Contain("each keeps a logbook of their own");
    }

    [PostgresFact]
    public void A_rack_that_leaves_keeps_everything_and_may_come_back()
    {
        var database = Prepared();
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk(Monday);
        one.SetUp("Ottoline Marsh");
        Join(one, database);
        Join(two, database);

        one.Rackside.Run("gym leave").Lines.Should().Equal("left; everything of this rack is on the server, and everything stays here");
        one.Train("Ottoline Marsh", sets: 2);
        one.Rackside.Run("gym sync").Code.Should().Be(64);
        one.Shows().Should().Contain("SetDone");
        Join(one, database).Error.Should().BeEmpty();
        two.Rackside.Run("gym sync").Error.Should().BeEmpty();

        two.Shows().Should().Be(one.Shows()).And.Contain("SetDone");
    }

    [PostgresFact]
    public void A_server_put_back_to_last_week_gets_everything_again()
    {
        var (database, backup) = (Prepared(), $"{server.NewDatabase()}_backup");
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk(Monday);
        one.SetUp("Ottoline Marsh");
        Join(one, database);
        Join(two, database);
        server.Sql("postgres", $"create database {backup} template {database}");
        one.Train("Ottoline Marsh", sets: 5);
        Sync(one);
        Sync(two);
        var before = one.Shows();
        server.Sql("postgres", $"drop database {database} with (force)");
        server.Sql("postgres", $"create database {database} template {backup}");

        two.Train("Ottoline Marsh", sets: 1);
        Sync(two);
        Sync(one);

        server.Ask(database, "select count(*) from rackside.event").Should().Be(1L + 7 + 3);
        one.Shows().Should().Be(two.Shows()).And.NotBe(before).And.StartWith(before.Split('\n')[0]);
    }

    [PostgresFact]
    public void A_backup_put_back_on_a_rack_gets_from_the_gym_what_it_lacks()
    {
        var database = Prepared();
        using var one = new RackOnDisk(Monday);
        using var two = new RackOnDisk(Monday);
        one.SetUp("Ottoline Marsh");
        one.Train("Ottoline Marsh", sets: 2);
        one.Rackside.Run($"backup {one.Folder}/kept").Code.Should().Be(0);
        Join(one, database);
        one.Train("Ottoline Marsh", sets: 4);
        Sync(one);
        Join(two, database);
        var all = one.Shows();

        one.Rackside.Run($"restore {Directory.GetFiles($"{one.Folder}/kept")[0]} --yes").Error.Should().BeEmpty();
        one.Shows().Should().NotBe(all);
        Sync(one);
        Sync(two);

        one.Shows().Should().Be(all);
        two.Shows().Should().Be(all);
    }

    private static void Sync(RackOnDisk rack) => rack.Rackside.Run("gym sync").Error.Should().BeEmpty();

    private static IReadOnlyList<Ran> Together(RackOnDisk[] racks)
    {
        var processes = racks.Select(r => r.Start("gym", "sync")).ToList();
        return [.. processes.Select(Ended)];
    }

    private static Ran Ended(Process process)
    {
        using (process)
        {
            var (output, error) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
            process.WaitForExit();
            return new Ran(process.ExitCode, output.Result, error.Result.ReplaceLineEndings(" "));
        }
    }

    private string Prepared()
    {
        var database = server.NewDatabase();
        using var rack = new RackOnDisk(Monday);
        var ran = rack.Rackside.RunWords(
            "gym", "prepare", server.To(database, PostgresServer.Owner), "--password-file", server.PasswordFile(PostgresServer.OwnerPassword), "--role", PostgresServer.Rack);
        (ran.Code, ran.Error).Should().Be((0, ""));
        return database;
    }

    private Ran Join(RackOnDisk rack, string database, int? port = null) =>
        rack.Rackside.RunWords("gym", "join", server.To(database, port: port), "--password-file", server.PasswordFile(PostgresServer.RackPassword));
}
