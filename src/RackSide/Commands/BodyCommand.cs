using System.CommandLine;
using NodaTime;
using RackSide.Json;
using RackSide.Training.Body;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Schedule;

namespace RackSide.Commands;

/// <summary><c>rackside body</c>: what weight, food and sleep come to, and what the formulas want to know.</summary>
internal sealed class BodyCommand : PrintingCommand
{
    private readonly Option<string?> height = new("--height") { Description = "How tall you are: 178, 1.78 m, 5'10\" or \"5 ft 10\".", HelpName = "HEIGHT" };
    private readonly Option<string?> age = new("--age") { Description = "Your age in years; it goes on by itself.", HelpName = "YEARS" };
    private readonly Option<string?> born = new("--born") { Description = "Instead of the age: the year you were born, or the date.", HelpName = "YEAR" };
    private readonly Option<string?> sex = new("--sex") { Description = "Which numbers the formulas are taken with: female or male.", HelpName = "SEX" };
    private readonly Option<string?> activity = new("--activity") { Description = "Your days with the training: light (sitting work), active (on your feet) or vigorous (heavy work).", HelpName = "HOW" };
    private readonly Option<string?> rises = new("--rises") { Description = "When you usually get up, for a bedtime: 6:30.", HelpName = "TIME" };
    private readonly Option<string?> noTargets = new("--no-targets") { Description = "Set no targets: pregnancy, eating-disorder or other. Which it is is not kept.", HelpName = "WHY" };
    private readonly Option<bool> targets = new("--targets") { Description = "Set targets again." };
    private readonly Option<bool> hide = new("--hide") { Description = "Show and ask nothing of weight, food and sleep anywhere." };
    private readonly Option<bool> show = new("--show") { Description = "Show it again." };
    private readonly Option<string?> facts = new("--facts") { Description = "A page of facts with its sources: food, sleep or supplements.", HelpName = "WHAT" };
    private readonly Option<bool> sure = new("--sure") { Description = "Keep a height that was asked back; it is meant." };

    /// <summary>The command.</summary>
    public BodyCommand(RackSideCommand root, Surroundings around)
        : base("body", "What body weight, food, water and sleep come to: trend, verdict, need, target. Its options tell what the formulas want.", root, around)
    {
        foreach (var option in (Option[])[height, age, born, sex, activity, rises, noTargets, targets, hide, show, facts, sure])
        {
            Options.Add(option);
        }
    }

    /// <summary>A line of a standing, its label in a column.</summary>
    public static IEnumerable<string> Line((string Label, string Text) line) =>
        PlainText.Wrap(line.Text, 10).Select((text, i) => i == 0 ? line.Label.PadRight(10) + text[10..] : text);

    /// <inheritdoc/>
    protected override int Run(ParseResult parsed)
    {
        if (parsed.GetValue(facts) is { } what)
        {
            Around.Out.Print(FactsText.Of(what));
            return ExitCode.Ok;
        }

        using var gym = Open(parsed);
        var lifter = gym.Joined(parsed.GetValue(Root.Who));
        var told = Told(parsed, gym, lifter);
        var kept = told == lifter.Body ? lifter : new CheckIns(gym, lifter).Keep(told);
        var standing = new CheckIns(gym, kept).Standing;
        return Print(parsed, Lines(parsed, kept, standing), () => BodyJson.Of(kept, standing), JsonOutput.Shapes.BodyJson);
    }

    private IEnumerable<string> Lines(ParseResult parsed, Lifter lifter, BodyStanding standing)
    {
        var answer = parsed.GetValue(noTargets) is { } why ? PlainText.Wrap(TargetRefusal.Of(Reason(why))) : [];
        return lifter.Body.Hidden
            ? [.. answer, "weight, food and sleep are hidden; rackside body --show shows them again"]
            : [.. answer, .. Profile(lifter.Body, standing), .. StandingLines.Of(standing).SelectMany(Line), .. Wanted(standing)];
    }

    private static IEnumerable<string> Wanted(BodyStanding standing)
    {
        (string What, string Line)[] all =
        [
            ("a body weight", "rackside weigh 72.4"), ("height", "rackside body --height 178"), ("age", "rackside body --age 41"), ("sex for the formula", "rackside body --sex female"),
        ];
        return standing.Refusal is null ? all.Where(a => standing.Missing.Contains(a.What)).Select(a => $"          to tell it: {a.Line}") : [];
    }

    private static IEnumerable<string> Profile(BodyProfile profile, BodyStanding standing)
    {
        string?[] told =
        [
            profile.Height?.ToString(),
            profile.AgeOn(standing.Today) is { } years ? $"{years} years" : null,
            profile.Sex is { } sex ? $"formulas for {(sex == FormulaSex.Male ? "men" : "women")}" : null,
            $"{profile.Activity.ToString().ToLowerInvariant()} days",
            profile.Rises is { } up ? $"up at {up.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)}" : null,
        ];
        return Line(("told", string.Join(", ", told.OfType<string>())));
    }

    private BodyProfile Told(ParseResult parsed, Gym gym, Lifter lifter)
    {
        Only(parsed, [age, born]);
        if ((parsed.GetValue(hide) && parsed.GetValue(show)) || (parsed.GetValue(targets) && parsed.GetValue(noTargets) is not null))
        {
            throw new Refusal(ExitCode.Usage, "the one option undoes the other; write one of them");
        }

        var before = lifter.Body;
        return before with
        {
            Height = parsed.GetValue(height) is { } tall ? HeightOf(tall, parsed, gym, lifter) : before.Height,
            BornBy = Born(parsed, gym.Today) ?? before.BornBy,
            Sex = Word(parsed.GetValue(sex), "--sex", ("female", FormulaSex.Female), ("male", FormulaSex.Male)) ?? before.Sex,
            Activity = Word(parsed.GetValue(activity), "--activity", ("light", DailyActivity.Light), ("active", DailyActivity.Active), ("vigorous", DailyActivity.Vigorous)) ?? before.Activity,
            Rises = parsed.GetValue(rises) is { } up ? CheckInEntry.Time(up) ?? throw Wrong("--rises", up, "write a time such as 6:30") : before.Rises,
            NoTargets = parsed.GetValue(noTargets) is { } why ? Reason(why) is var _ : !parsed.GetValue(targets) && before.NoTargets,
            Hidden = parsed.GetValue(hide) || (!parsed.GetValue(show) && before.Hidden),
        };
    }

    private Height HeightOf(string typed, ParseResult parsed, Gym gym, Lifter lifter)
    {
        var unit = lifter.Unit == MassUnit.Kilogram ? LengthUnit.Centimetre : LengthUnit.Inch;
        var read = HeightEntry.Read(typed, unit) ?? HeightEntry.Read(typed, LengthUnit.Centimetre);
        if (read is not { } tall)
        {
            var swapped = NumberEntry.Parse(typed) is { } number && gym.Logbook.WeighIns(lifter.Key).LastOrDefault() is { } last
                && EntryDoubt.Of(Height.Cm(number), last.Weight) is { } doubt ? $"{doubt}; " : "";
            throw Wrong("--height", typed, swapped + "write 178, 1.78 m or 5'10\"");
        }

        return !parsed.GetValue(sure) && new CheckIns(gym, lifter).Doubt(tall) is { } asked
            ? throw new Refusal(ExitCode.Usage, $"{asked}; if it is right add --sure")
            : tall;
    }

    private LocalDate? Born(ParseResult parsed, LocalDate today)
    {
        if (parsed.GetValue(age) is { } typed)
        {
            return NumberEntry.Parse(typed) is { } years && decimal.IsInteger(years) && years is >= 5 and <= 110
                ? today.PlusYears(-(int)years)
                : throw Wrong("--age", typed, "write an age in years, such as 41");
        }

        if (parsed.GetValue(born) is not { } told)
        {
            return null;
        }

        var date = NumberEntry.Parse(told) is { } year and >= 1900 and <= 2100 && decimal.IsInteger(year)
            ? new LocalDate((int)year, 12, 31)
            : DateEntry.Read(told, today) ?? throw Wrong("--born", told, "write a year such as 1985, or a date such as 1985-03-12");
        return date.Year <= today.Year - 5 ? date : throw Wrong("--born", told, "write the year you were born in");
    }

    private static NoTargetsFor Reason(string why) => Word(
        why, "--no-targets", ("pregnancy", NoTargetsFor.Pregnancy), ("eating-disorder", NoTargetsFor.EatingDisorder), ("other", NoTargetsFor.Other))!.Value;

    private static T? Word<T>(string? typed, string option, params (string Word, T Value)[] words)
        where T : struct => typed is null ? null
            : words.Where(w => w.Word.Equals(typed, StringComparison.OrdinalIgnoreCase)).Select(w => (T?)w.Value).FirstOrDefault()
                ?? throw Wrong(option, typed, $"write {PlainText.Or([.. words.Select(w => w.Word)])}");

    private static void Only(ParseResult parsed, Option<string?>[] options)
    {
        if (options.Count(o => parsed.GetValue(o) is not null) > 1)
        {
            throw new Refusal(ExitCode.Usage, $"{PlainText.Or([.. options.Select(o => o.Name)])}: write one of them");
        }
    }

    private static Refusal Wrong(string option, string typed, string right) => new(ExitCode.Usage, $"{option}: \"{typed}\" will not do; {right}");
}
