using System.CommandLine;
using NodaTime;
using RackSide.Json;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary><c>rackside redate</c>: a session that a wrong clock dated gets its right date. Alone it lists the last sessions.</summary>
internal sealed class RedateCommand : PrintingCommand
{
    private const int Listed = 10;

    private readonly Argument<string[]> words = new("session")
    {
        Description = "The session, by its date or its number, and the date it should have: 2026-11-25, 25.11 or yesterday.",
        HelpName = "SESSION DATE",
        Arity = new ArgumentArity(0, 2),
    };

    /// <summary>The command.</summary>
    public RedateCommand(RackSideCommand root, Surroundings around)
        : base("redate", "Gives a session that a wrong clock dated its right date. Alone it lists the last sessions.", root, around)
    {
        words.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(words);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var typed = parsed.GetValue(words) ?? [];
        if (typed.Length == 1)
        {
            throw new Refusal(ExitCode.Usage, "redate needs the session and the date it should have, such as rackside redate 2026-11-25 2026-11-26");
        }

        using var gym = Open(parsed, writes: typed.Length == 2);
        var lifter = Who(gym, parsed);
        TellNewcomer(lifter);
        var done = typed.Length == 2 ? Mend(gym, lifter, typed[0], typed[1]) : null;
        var sessions = gym.Logbook.Sessions(lifter.Key, gym.Logbook.Cards(lifter.Key).TakeLast(Listed).Select(c => c.Id).ToHashSet()).ToList();
        return Print(parsed, Lines(done, sessions), () => RedateJson.Of(lifter, sessions), JsonOutput.Shapes.RedateJson);
    }

    private static string Mend(Gym gym, Lifter lifter, string which, string when)
    {
        var session = Find(gym, lifter, which);
        var date = TypedDate.Read(when, gym.Today);
        if (date > gym.Today)
        {
            throw new Refusal(ExitCode.Usage, $"{date.Shown()} is yet to come; a session has a date that has been");
        }

        if (date == session.Date)
        {
            throw new Refusal(ExitCode.Usage, $"that session is of {date.Shown()} already");
        }

        gym.Logbook.Append(session.Head.Id, new SessionRedated(gym.Logbook.NextId(), gym.Clock.GetCurrentInstant(), date));
        return $"{session.Head.DayName} of {session.Date.Shown()} is now of {date.Shown()}";
    }

    // The newest of a date: the one that a clock has just dated wrong.
    private static SessionRecord Find(Gym gym, Lifter lifter, string which)
    {
        var cards = gym.Logbook.Cards(lifter.Key);
        if (cards.FirstOrDefault(c => c.Id.ToString() == which) is { } numbered)
        {
            return Read(gym, lifter, numbered);
        }

        var date = TypedDate.Read(which, gym.Today);
        return cards.LastOrDefault(c => c.Date == date) is { } dated ? Read(gym, lifter, dated)
            : throw new Refusal(ExitCode.Usage, $"no session is of {date.Shown()}; rackside redate lists the last ones");
    }

    private static SessionRecord Read(Gym gym, Lifter lifter, SessionCard card) =>
        gym.Logbook.Sessions(lifter.Key, new HashSet<FactId> { card.Id })[0];

    private static IEnumerable<string> Lines(string? done, List<SessionRecord> sessions) =>
    [
        .. done is null ? [] : PlainText.Wrap(done),
        .. sessions.Count == 0 ? ["no session yet"] : sessions.Select(s =>
            $"{s.Head.Id,-12} {s.Date.Shown()}  {s.Head.DayName}{(s.Date == s.Head.Date ? "" : $"  (dated {s.Head.Date.Shown()} at first)")}"),
    ];
}
