using System.CommandLine;
using RackSide.Logbook;
using RackSide.Racks;

namespace RackSide.Commands;

/// <summary><c>rackside gym</c>: several racks, one gym. docs/gym.md says how one is set up.</summary>
internal sealed class GymCommand : Command
{
    /// <summary>The command.</summary>
    public GymCommand(RackSideCommand root, Surroundings around)
        : base("gym", "Several racks, one gym: the same logbook on every rack, through a PostgreSQL server.")
    {
        Subcommands.Add(new GymJoinCommand(root, around));
        Subcommands.Add(new GymStatusCommand(root, around));
        Subcommands.Add(new GymSyncCommand(root, around));
        Subcommands.Add(new GymLeaveCommand(root, around));
        Subcommands.Add(new GymPrepareCommand(around));
    }

    /// <summary>Opens the gym with its logbook to write in.</summary>
    /// <exception cref="Refusal">It is the invented one, or cannot be opened.</exception>
    public static Gym Open(RackSideCommand root, Surroundings around, ParseResult parsed)
    {
        if (parsed.GetValue(root.Demo))
        {
            throw new Refusal(ExitCode.Usage, "the invented gym of --demo joins no other");
        }

        var gym = root.Open(parsed);
        around.Error.Print(gym.Report is { } report ? PlainText.Wrap($"rackside: {report}") : []);
        return gym;
    }

    /// <summary>Does something with the gym's server, and refuses in one sentence where that cannot be.</summary>
    public static T With<T>(GymServerFile server, Surroundings around, Func<GymLink, T> what)
    {
        try
        {
            using var link = new GymLink(server, around.Environment);
            return what(link);
        }
        catch (GymTrouble trouble)
        {
            throw new Refusal(trouble.Code, trouble.Message);
        }
    }

    /// <summary>Exchanges, and says what came of it.</summary>
    public static IEnumerable<string> Exchange(GymLink link, LiteLogbook book)
    {
        var (sent, taken) = new GymSync(book, link).Run(GymSync.Many);
        if (book.HoldsErased)
        {
            book.EraseErased();
        }

        return [$"sent {sent}, taken {taken}; nothing waits"];
    }
}

/// <summary><c>rackside gym join</c>: this rack and its logbook become one of a gym's.</summary>
internal sealed class GymJoinCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string> connection = new("connection")
    {
        Description = "The server, as \"Host=gym.local;Database=gym;Username=rack\"; never with a password in it.",
        HelpName = "CONNECTION",
    };

    private readonly Option<string?> file = GymPassword.Option();

    /// <summary>The command.</summary>
    public GymJoinCommand(RackSideCommand root, Surroundings around)
        : base("join", "Joins a gym: everything here goes to its server, and everything of the other racks comes. Nothing is lost, here or there.")
    {
        (this.root, this.around) = (root, around);
        connection.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(connection);
        Options.Add(file);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        var server = new GymServerFile(parsed.GetValue(connection)!, GymPassword.Full(parsed.GetValue(file)));
        return GymCommand.With(server, around, link =>
        {
            link.Check();
            using var gym = GymCommand.Open(root, around, parsed);
            var book = (LiteLogbook)gym.Logbook;
            var identity = link.Identity();
            if (book.Share is { Joined: true } share && share.Gym != identity)
            {
                throw new Refusal(ExitCode.Usage, "this rack is in another gym; leave that one first with rackside gym leave");
            }

            server.Keep(gym.Folders);
            if (!book.Share.Joined)
            {
                book.Join(identity);
            }

            around.Out.Print([.. PlainText.Wrap($"joined as rack {book.Share.Rack}"), .. GymCommand.Exchange(link, book), .. GymText.Holds(book)]);
            return ExitCode.Ok;
        });
    }
}

/// <summary><c>rackside gym sync</c>: one exchange, for a timer or by hand.</summary>
internal sealed class GymSyncCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    /// <summary>The command.</summary>
    public GymSyncCommand(RackSideCommand root, Surroundings around)
        : base("sync", "Sends what waits and takes what is new, once. The screen does so by itself while it is open.")
    {
        (this.root, this.around) = (root, around);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = GymCommand.Open(root, around, parsed);
        var book = (LiteLogbook)gym.Logbook;
        var server = GymServerFile.Read(gym.Folders);
        if (!book.Share.Joined || server is null)
        {
            throw new Refusal(ExitCode.Usage, "this rack is in no gym; join one with rackside gym join");
        }

        around.Out.Print(GymCommand.With(server, around, link => GymCommand.Exchange(link, book)));
        return ExitCode.Ok;
    }
}

/// <summary><c>rackside gym leave</c>: this rack goes on alone, with everything it has.</summary>
internal sealed class GymLeaveCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    /// <summary>The command.</summary>
    public GymLeaveCommand(RackSideCommand root, Surroundings around)
        : base("leave", "Leaves the gym. Everything stays: here what is here, on the server what was sent.")
    {
        (this.root, this.around) = (root, around);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = GymCommand.Open(root, around, parsed);
        var book = (LiteLogbook)gym.Logbook;
        if (book.Share is not { Joined: true } share)
        {
            throw new Refusal(ExitCode.Usage, "this rack is in no gym, so there is none to leave");
        }

        book.Leave();
        File.Delete(GymServerFile.PathIn(gym.Folders));
        around.Out.Print(PlainText.Wrap(share.Waits
            ? $"left; {CountsText.Count(share.Waiting, "event")} not sent yet stay here, and are sent if this rack joins again"
            : "left; everything of this rack is on the server, and everything stays here"));
        return ExitCode.Ok;
    }
}
