using System.CommandLine;
using NodaTime;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Planning;
using RackSide.Training.Plans;
using RackSide.Training.Schedule;
using RackSide.Visits;

namespace RackSide.Commands;

/// <summary><c>rackside enter</c>: a session that was written on paper, one line for each exercise.</summary>
internal sealed class EnterCommand : Command
{
    private readonly RackSideCommand root;
    private readonly Surroundings around;

    private readonly Argument<string?> day = new("date")
    {
        Description = "The date of the session; today if not said. 2026-11-25, 25.11 or yesterday.",
        HelpName = "DATE",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> which = new("--day") { Description = "Another training day of the plan than the one due then.", HelpName = "DAY" };

    /// <summary>The command.</summary>
    public EnterCommand(RackSideCommand root, Surroundings around)
        : base("enter", "Writes a session from paper into the logbook: one line for each exercise, ENTER where all was done.")
    {
        (this.root, this.around) = (root, around);
        Arguments.Add(day);
        Options.Add(which);
        SetAction(Run);
    }

    private int Run(ParseResult parsed)
    {
        using var gym = root.Open(parsed, begin: false);
        var lifter = gym.Joined(parsed.GetValue(root.Who));
        var date = parsed.GetValue(day) is { } typed ? TypedDate.Read(typed, gym.Today) : gym.Today;
        var history = gym.Recent(lifter);
        Check(gym, history, date);
        var plan = Plan(gym, lifter, history, date, parsed.GetValue(which));
        around.Out.Print([$"{plan.Day!.Name}, {date.Shown()}, {lifter.Name}", .. PlainText.Wrap(SheetLine.Help), ""]);
        var lines = plan.Prescriptions.Select(p => Ask(gym, p)).ToList();
        var weight = AskWeight(lifter.Unit);
        new PaperSession(gym, lifter, plan, date).Write(lines, weight);
        around.Out.Print([.. PlainText.Wrap($"written: {plan.Day.Name} of {date.Shown()}, {lines.Sum(l => l.Sets.Count)} sets. A wrong one can be mended: rackside redate, or in the next session.")]);
        return ExitCode.Ok;
    }

    // Loads follow from the sessions before; one put in between would change what was asked for afterwards.
    private static void Check(Gym gym, TrainingHistory history, LocalDate date)
    {
        if (date > gym.Today)
        {
            throw new Refusal(ExitCode.Usage, $"{date.Shown()} is yet to come; a session has a date that has been");
        }

        if (history.Sessions.LastOrDefault(s => s.Date >= date) is { } later)
        {
            throw new Refusal(ExitCode.Usage, $"{later.Head.DayName} of {later.Date.Shown()} is in the logbook already; only a session after the newest can be entered");
        }
    }

    private static TodaysPlan Plan(Gym gym, Lifter lifter, TrainingHistory history, LocalDate date, string? asked)
    {
        var wanted = asked is null ? null : gym.Plan.Days.FirstOrDefault(d => string.Equals(d.Key, asked, StringComparison.OrdinalIgnoreCase) || string.Equals(d.Name, asked, StringComparison.OrdinalIgnoreCase))
            ?? throw new Refusal(ExitCode.Usage, $"--day: the plan has no day \"{asked}\"; its days are {PlainText.Or([.. gym.Plan.Days.Select(d => d.Key)])}");
        var due = Planner.For(gym.Plan, gym.Catalogue, gym.Kit, lifter, history, date, wanted);
        return due.Day is not null ? due : Planner.For(gym.Plan, gym.Catalogue, gym.Kit, lifter, history, date, due.Due.NextDay);
    }

    private SheetLine Ask(Gym gym, Prescription asked)
    {
        while (true)
        {
            var exercise = gym.Catalogue[asked.Exercise];
            var load = AskedText.Load(asked.Load, exercise) is { Length: > 0 } told ? $" {told}" : "";
            var (line, refusal) = SheetLine.Read(Typed($"{exercise.ShortName}, {AskedText.Sets(asked)}{load}: "), asked);
            if (line is not null)
            {
                return line;
            }

            around.Out.Print(PlainText.Wrap(refusal!, margin: 2));
        }
    }

    private Mass? AskWeight(MassUnit unit)
    {
        while (true)
        {
            var typed = Typed($"body weight in {unit.Symbol()}, ENTER for none: ").Trim();
            if (typed.Length == 0 || BodyWeightEntry.Read(typed, unit) is not null)
            {
                return typed.Length == 0 ? null : BodyWeightEntry.Read(typed, unit);
            }

            around.Out.Print([BodyWeightEntry.Refusal(unit)]);
        }
    }

    /// <summary>One line; where there is none, or it says stop, nothing was written yet and nothing will be.</summary>
    private string Typed(string prompt)
    {
        around.Out.Write(prompt);
        around.Out.Flush();
        var typed = around.In.ReadLine();
        return typed is null || string.Equals(typed.Trim(), "q", StringComparison.OrdinalIgnoreCase)
            ? throw new Refusal(ExitCode.Usage, "stopped before the sheet was done; nothing was written")
            : typed;
    }
}
