using RackSide.Tests.Commands;

namespace RackSide.Tests.Racks;

/// <summary>The commands, against a real server, through the program that speaks to it.</summary>
[Collection(nameof(PostgresServer))]
public class GymCommandTests(PostgresServer server)
{
    [PostgresFact]
    public void A_rack_joins_sends_what_it_has_and_a_second_one_has_it_too()
    {
        var database = Prepared();
        using var one = new RackOnDisk("2026-11-02T07:00");
        using var two = new RackOnDisk("2026-11-04T07:00");
        one.SetUp("Ottoline Marsh");
        one.Rackside.Run("weigh 72.4").Error.Should().BeEmpty();

        var joined = Join(one, database);
        Join(two, database);

        (joined.Code, joined.Error).Should().Be((0, ""));
        two.Rackside.Run("lifters").Out.Should().StartWith("Ottoline Marsh");
        one.Rackside.Run("gym status").Lines.Should().Contain("nothing waits to be sent");
    }

    private string Prepared()
    {
        var database = server.NewDatabase();
        var ran = new RackOnDisk("2026-11-01T07:00").Rackside.RunWords(
            "gym", "prepare", server.To(database, PostgresServer.Owner), "--password-file", server.PasswordFile(PostgresServer.OwnerPassword), "--role", PostgresServer.Rack);
        (ran.Code, ran.Error).Should().Be((0, ""));
        return database;
    }

    private Ran Join(RackOnDisk rack, string database) =>
        rack.Rackside.RunWords("gym", "join", server.To(database), "--password-file", server.PasswordFile(PostgresServer.RackPassword));
}
