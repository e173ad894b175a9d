using System.CommandLine;
using NodaTime;
using RackSide.Json;
using RackSide.Pages.Calendars;
using RackSide.Training.History;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary><c>rackside away</c>: days on which nobody trains, told, ended, taken back or listed.</summary>
internal sealed class AwayCommand : PrintingCommand
{
    private readonly Argument<string[]> dates = new("dates")
    {
        Description = "The first day away and the last; without a last, until you say that you are back. 2026-12-20, 20.12 or today.",
        HelpName = "FROM UNTIL",
        Arity = new ArgumentArity(0, 2),
    };

    private readonly Option<string?> reason = new("--for") { Description = "holiday, illness or other; other if not said.", HelpName = "WHY" };
    private readonly Option<bool> back = new("--back") { Description = "You are back: the days away ended yesterday." };
    private readonly Option<string?> takeBack = new("--take-back") { Description = "Take back the days away that begin on this day.", HelpName = "FROM" };

    /// <summary>The command.</summary>
    public AwayCommand(RackSideCommand root, Surroundings around)
        : base("away", "Days away: neither due nor missed. Alone it lists them.", root, around)
    {
        dates.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(dates);
        Options.Add(reason);
        Options.Add(back);
        Options.Add(takeBack);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var why = Why(parsed.GetValue(reason));
        var typed = parsed.GetValue(dates) ?? [];
        var begun = parsed.GetValue(takeBack);
        if (new[] { typed.Length > 0, parsed.GetValue(back), begun is not null }.Count(asked => asked) > 1)
        {
            throw new Refusal(ExitCode.Usage, "dates, --back and --take-back are three different things; ask for one of them");
        }

        var writes = typed.Length > 0 || parsed.GetValue(back) || begun is not null;
        using var gym = Open(parsed, writes);
        var lifter = gym.Lifter(parsed.GetValue(Root.Who));
        if (lifter is null && writes)
        {
            throw new Refusal(ExitCode.Usage, "nobody has joined yet, so nobody is away; start rackside to set up");
        }

        lifter ??= Who(gym, parsed);
        TellNewcomer(lifter);
        var absences = new Absences(gym, lifter);
        var done = typed.Length > 0 ? Tell(absences, gym, typed, why)
            : parsed.GetValue(back) ? Back(absences)
            : begun is not null ? TakeBack(absences, gym, begun)
            : [];
        return Print(parsed, Lines(gym, lifter, absences, done), () => AwayJson.Of(gym, lifter, absences.Recent), JsonOutput.Shapes.AwayJson);
    }

    private static IEnumerable<string> Tell(Absences absences, Gym gym, string[] typed, AwayFor why)
    {
        var from = TypedDate.Read(typed[0], gym.Today);
        var until = typed.Length > 1 ? TypedDate.Read(typed[1], from > gym.Today ? from : gym.Today) : (LocalDate?)null;
        return absences.Refusal(from, until) is { } refusal
            ? throw new Refusal(ExitCode.Usage, refusal.TrimEnd('.'))
            : [$"written: away {AwayText.Of(absences.Tell(from, until, why))}"];
    }

    private static IEnumerable<string> Back(Absences absences) => absences.Back() is { Count: > 0 } ended
        ? ended.Select(a => $"welcome back; ended yesterday: away {AwayText.Of(a)}")
        : throw new Refusal(ExitCode.Usage, "--back: you are not away today; rackside away lists the days away");

    private static IEnumerable<string> TakeBack(Absences absences, Gym gym, string begun)
    {
        var from = TypedDate.Read(begun, gym.Today);
        var away = absences.Recent.LastOrDefault(a => a.From == from)
            ?? throw new Refusal(ExitCode.Usage, $"--take-back: no days away begin on {from.Shown()}; rackside away lists them");
        absences.TakeBack(away);
        return [$"taken back: away {AwayText.Of(away)}"];
    }

    private static IEnumerable<string> Lines(Gym gym, Lifter lifter, Absences absences, IEnumerable<string> done)
    {
        var recent = absences.Recent;
        var due = gym.TodaysPlan(lifter).Due;
        return
        [
            .. done.SelectMany(line => PlainText.Wrap(line)),
            .. recent.Count == 0 ? ["no days away"] : recent.Select(a => $"away {AwayText.Of(a)}"),
            .. PlainText.Wrap($"next: {(due.Day is { } day ? $"today, {day.Name}" : $"{due.Next.Short()}, {due.NextDay.Name}")}"),
        ];
    }

    private static AwayFor Why(string? word) => word switch
    {
        null or "other" => AwayFor.Other,
        "holiday" => AwayFor.Holiday,
        "illness" => AwayFor.Illness,
        _ => throw new Refusal(ExitCode.Usage, $"--for: \"{word}\" is no reason known here; write holiday, illness or other"),
    };
}
