using System.CommandLine;
using NodaTime;
using RackSide.Json;
using RackSide.Pages.Bodies;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary><c>rackside weigh</c>: a check-in of a morning.</summary>
internal sealed class WeighCommand : PrintingCommand
{
    private readonly Argument<string[]> weight = new("weight")
    {
        Description = "Body weight, such as 81.4, 81,4 or 179.5lb; your own unit if none is said.",
        HelpName = "WEIGHT",
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<string?> slept = new("--slept") { Description = "Hours slept last night: 7.5 or 7:30.", HelpName = "HOURS" };
    private readonly Option<string?> food = new("--food") { Description = "Eaten on the day before, about, in kilocalories.", HelpName = "KCAL" };
    private readonly Option<string?> water = new("--water") { Description = "Drunk on the day before, in litres.", HelpName = "LITRES" };
    private readonly Option<string?> sore = new("--sore") { Description = "How sore the body is: none, some or much.", HelpName = "HOW" };
    private readonly Option<string?> on = new("--on") { Description = "The morning it is of; today if not said.", HelpName = "DATE" };
    private readonly Option<bool> sure = new("--sure") { Description = "Keep a number that was asked back; it is meant." };

    /// <summary>The command.</summary>
    public WeighCommand(RackSideCommand root, Surroundings around)
        : base("weigh", "A check-in: body weight, and if you like sleep, food, water and soreness. Alone it shows the last weighings.", root, around)
    {
        weight.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(weight);
        foreach (var option in (Option[])[slept, food, water, sore, on, sure])
        {
            Options.Add(option);
        }
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        using var gym = Open(parsed);
        var lifter = gym.Joined(parsed.GetValue(Root.Who));
        var date = parsed.GetValue(on) is { } typed ? Past(TypedDate.Read(typed, gym.Today), gym.Today) : gym.Today;
        var answers = Answers(parsed, lifter);
        var checkIns = new CheckIns(gym, lifter);
        if (!parsed.GetValue(sure) && answers.Weight is { } told && checkIns.Doubt(told, date) is { } doubt)
        {
            throw new Refusal(ExitCode.Usage, $"{doubt}; if it is right add --sure");
        }

        var written = checkIns.Keep(answers, date);
        var standing = checkIns.Standing;
        return Print(parsed, Lines(gym, lifter, standing, written, date), () => BodyJson.Of(lifter, standing), JsonOutput.Shapes.BodyJson);
    }

    private static IEnumerable<string> Lines(Gym gym, Lifter lifter, BodyStanding standing, string written, LocalDate date)
    {
        var done = written.Length > 0 ? PlainText.Wrap($"written: {written}; {date.Shown()}") : Last(gym, lifter);
        return lifter.Body.Hidden || standing.Last is null ? done
            : [.. done, .. StandingLines.Of(standing).Where(l => l.Label is "today" or "trend" or "verdict" or "targets").SelectMany(BodyCommand.Line)];
    }

    private static IEnumerable<string> Last(Gym gym, Lifter lifter)
    {
        var last = gym.Logbook.WeighIns(lifter.Key).TakeLast(7).Select(w => $"{w.Date.Shown()}  {w.Weight}").ToList();
        return last.Count > 0 ? last : ["nobody was weighed yet; write rackside weigh 72.4"];
    }

    private CheckInAnswers Answers(ParseResult parsed, Lifter lifter) => new(
        Weight(string.Concat(parsed.GetValue(weight) ?? []), lifter.Unit),
        Told(parsed.GetValue(slept), CheckInEntry.Slept, "--slept", CheckInEntry.SleepRefusal),
        Told(parsed.GetValue(food), CheckInEntry.Kilocalories, "--food", CheckInEntry.FoodRefusal),
        Told(parsed.GetValue(water), CheckInEntry.Millilitres, "--water", CheckInEntry.WaterRefusal),
        Told(parsed.GetValue(sore), How, "--sore", "write none, some or much"));

    private static Mass? Weight(string typed, MassUnit unit)
    {
        if (typed.Length == 0)
        {
            return null;
        }

        var named = typed.Length > 2 ? MassUnits.Parse(typed[^2..]) : null;
        return BodyWeightEntry.Read(named is null ? typed : typed[..^2], named ?? unit)
            ?? throw new Refusal(ExitCode.Usage, $"\"{typed}\": {Lower(BodyWeightEntry.Refusal(named ?? unit))}");
    }

    private static T? Told<T>(string? typed, Func<string, T?> read, string option, string refusal)
        where T : struct => typed is null ? null
            : read(typed) ?? throw new Refusal(ExitCode.Usage, $"{option}: \"{typed}\": {Lower(refusal)}");

    private static Soreness? How(string word) => word.ToLowerInvariant() switch
    {
        "none" => Soreness.None,
        "some" => Soreness.Some,
        "much" => Soreness.Much,
        _ => null,
    };

    private static LocalDate Past(LocalDate date, LocalDate today) => date <= today && Period.DaysBetween(date, today) <= 3660
        ? date
        : throw new Refusal(ExitCode.Usage, $"--on: {date.Shown()} is {(date > today ? "still to come" : "too long ago; check the year")}");

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}
