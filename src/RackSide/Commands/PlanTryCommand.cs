using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using NodaTime;
using RackSide.Files;
using RackSide.Json;
using RackSide.Training.Exercises;
using RackSide.Training.Forecasting;
using RackSide.Training.Kit;
using RackSide.Training.Loading;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Commands;

/// <summary><c>rackside plan try</c>: a year of many invented lifters by a plan, before anybody lifts. It opens no logbook.</summary>
internal sealed class PlanTryCommand : PrintingCommand
{
    private const int UsualLifters = 200, MostLifters = 1000, UsualSeed = 1, MostSeed = 1_000_000, UsualMinutes = 75, MostMinutes = 240;

    // A Monday, and the same always, so that the answer rests on the plan, the kit and the seed alone.
    private static readonly LocalDate First = new(2026, 1, 5);

    private readonly Argument<string> file = new("file") { Description = "The plan, a YAML file.", HelpName = "FILE" };
    private readonly Option<string?> kit = new("--kit") { Description = "The kit: a gym.yaml, or a file of its kit fields; this gym's if not said.", HelpName = "FILE" };
    private readonly Option<string?> lifters = new("--lifters") { Description = $"How many invented lifters; {UsualLifters} if not said.", HelpName = "NUMBER" };
    private readonly Option<string?> seed = new("--seed") { Description = "Other invented lifters; the same seed invents the same ones.", HelpName = "NUMBER" };
    private readonly Option<string?> minutes = new("--minutes") { Description = $"The time there is for a session; {UsualMinutes} if not said.", HelpName = "MINUTES" };

    /// <summary>The command.</summary>
    public PlanTryCommand(RackSideCommand root, Surroundings around)
        : base("try", "Tries a plan on invented lifters for a year: loads, stalls, minutes, sets a week, doubts.", root, around)
    {
        file.Validators.Add(CommandLineMistake.RefuseOptions);
        Arguments.Add(file);
        Options.Add(kit);
        Options.Add(lifters);
        Options.Add(seed);
        Options.Add(minutes);
    }

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        var (path, catalogue) = (parsed.GetValue(file)!, CatalogueFile.Read());
        var (count, chosen, time) = (
            Number(parsed, lifters, UsualLifters, 1, MostLifters), Number(parsed, seed, UsualSeed, 0, MostSeed), Number(parsed, minutes, UsualMinutes, 10, MostMinutes));
        var plan = Good(PlanFile.ReadFrom(path, catalogue), path);
        var (gym, from) = KitOf(parsed);
        var trial = PlanTrial.Of(plan, catalogue, First, PlanTrial.WeeksOfAYear, Lives(plan, catalogue, gym, count, chosen));
        var tried = new TriedPlan(plan, gym, from, chosen, trial, PlanDoubts.Of(plan, catalogue, gym, trial, Duration.FromMinutes(time)));
        return Print(parsed, PlanTrialText.Lines(tried), () => PlanTrialJson.Of(tried), JsonOutput.Shapes.PlanTrialJson);
    }

    private (GymKit Kit, string From) KitOf(ParseResult parsed) => parsed.GetValue(kit) is { } path ? (Good(KitFile.ReadFrom(path), path), path)
        : Root.Rules(parsed)?.Kit is { } own ? (own, "this gym's")
        : (KitDefaults.For(MassUnit.Kilogram), "a usual garage's, as no gym is set up here");

    private static T Good<T>(Reading<T> reading, string path)
        where T : class =>
        reading.Value ?? throw new Refusal(File.Exists(path) ? ExitCode.Data : ExitCode.NoInput, string.Join(Environment.NewLine, reading.Mistakes));

    private static int Number(ParseResult parsed, Option<string?> option, int usual, int least, int most) => parsed.GetValue(option) switch
    {
        null => usual,
        var text when int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most => number,
        var text => throw new Refusal(ExitCode.Usage, $"{option.Name}: \"{text}\" will not do; write {least} to {most}, such as {usual}"),
    };

    /// <summary>Each lifter by a chance of its own, so that neither their number nor the order they finish in changes any.</summary>
    private IReadOnlyList<IReadOnlyList<TrialSession>> Lives(Plan plan, Catalogue catalogue, GymKit gym, int count, int chosen)
    {
        var progress = new TryProgress(Around, count);
        var lives = new IReadOnlyList<TrialSession>[count];
        Parallel.For(0, count, () => new KitLoads(gym), (i, _, loads) =>
        {
            lives[i] = TrialYear.Live(plan, catalogue, loads, First, PlanTrial.WeeksOfAYear, new Random((chosen * MostLifters) + i).NextDouble);
            progress.OneMore();
            return loads;
        }, _ => { });
        progress.End();
        return lives;
    }
}

/// <summary>What was tried, and what came of it.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Kit">The kit.</param>
/// <param name="KitFrom">Whose kit, in words.</param>
/// <param name="Seed">The seed of the lifters.</param>
/// <param name="Trial">What came of it.</param>
/// <param name="Doubts">What to look at.</param>
internal sealed record TriedPlan(Plan Plan, GymKit Kit, string KitFrom, int Seed, PlanTrial Trial, IReadOnlyList<string> Doubts);

/// <summary>How far it is, on the standard error, from the second second on: a line overwritten on a terminal, elsewhere one line that says it takes a while.</summary>
internal sealed class TryProgress(Surroundings around, int of)
{
    private const int BarWidth = 24;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    private readonly long begun = Stopwatch.GetTimestamp();
    private readonly Lock one = new();
    private int done;
    private int shown = -1;

    /// <summary>One lifter more is done.</summary>
    public void OneMore()
    {
        lock (one)
        {
            var full = BarWidth * ++done / of;
            if (Stopwatch.GetElapsedTime(begun) < Patience || full == shown || done == of)
            {
                return;
            }

            Tell(full);
            shown = full;
        }
    }

    /// <summary>All are.</summary>
    public void End()
    {
        if (shown >= 0 && around.TerminalSize() is not null)
        {
            around.Error.Write($"\r{new string(' ', BarWidth + 12)}\r");
        }
    }

    private void Tell(int full)
    {
        if (around.TerminalSize() is not null)
        {
            around.Error.Write($"\rtrying it [{new string('=', full)}{new string(' ', BarWidth - full)}]");
        }
        else if (shown < 0)
        {
            around.Error.Print([$"rackside: {of} invented lifters train for a year; it takes a moment"]);
        }
    }
}
