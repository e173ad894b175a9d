using System.Globalization;
using System.Text;
using RackSide.Training.Kit;
using RackSide.Training.Measures;

namespace RackSide.Files;

/// <summary>Writes house rules with the comments a person needs to change them.</summary>
internal static class GymText
{
    /// <summary>The text of the file.</summary>
    public static string Of(HouseRules rules)
    {
        var text = new StringBuilder();
        Head(text, rules);
        Bars(text, rules.Kit);
        Plates(text, rules.Kit);
        Masses(text, "Dumbbells: the mass of one, each owned as a pair.", "dumbbells", rules.Kit.Dumbbells);
        Handles(text, rules.Kit);
        Masses(text, "Positions of the weight stack; none where there is no machine.", "stack", rules.Kit.Stack);
        Machines(text, rules.Kit);
        Bands(text, rules.Kit);
        Belt(text, rules.Kit);
        Equipment(text, rules.Kit);
        Line(text, "# Whether the bell may ring: on or off.", $"sound: {(rules.Sound ? "on" : "off")}", "");
        Line(text, "# Holds: the seconds counted before one begins, and the time from its end to the key, taken off one stopped early.",
            $"lead_in: {Seconds(rules.LeadIn)}", $"walk_to_key: {Seconds(rules.WalkToKey)}", "");
        Line(text, "# The weekday that a shown week begins with: monday, sunday or saturday.", $"week_starts: {rules.WeekStarts.ToString().ToLowerInvariant()}", "");
        Line(text, "# How much room the backups beside the logbook may take; off for none.",
            $"backups: {(rules.BackupMegabytes == 0 ? "off" : $"{rules.BackupMegabytes.ToString(CultureInfo.InvariantCulture)} MB")}", "");
        Line(text, "# The gym's time zone, such as Europe/London; where none is written, that of the machine.",
            rules.Zone is { } zone ? $"time_zone: {zone.Id}" : "# time_zone: Europe/London");
        return text.ToString();
    }

    private static string Seconds(NodaTime.Duration time) => string.Create(CultureInfo.InvariantCulture, $"{time.TotalSeconds:0} s");

    private static void Head(StringBuilder text, HouseRules rules)
    {
        Line(text, "# House rules of this gym. Change them here or on the set-up screen; they are read each time the program starts.", "");
        Line(text, "# The unit marked on the plates: kg or lb.", $"unit: {rules.Kit.Unit.Symbol()}", "");
        var days = rules.TrainingDays.Select(d => d.ToString().ToLowerInvariant());
        Line(text, "# The weekdays people train on, with at least a day of rest between. The word rolling in place of the list has each",
            "# training day come its rest days after the one before, whatever the weekday.", $"training_days: {(rules.Rolls ? "rolling" : $"[{string.Join(", ", days)}]")}", "");
    }

    private static void Bars(StringBuilder text, GymKit kit)
    {
        Line(text, "# Bars, the one used by default first. A bar can also tell the mass of a collar (collars: 2.5 kg, two of them count), the",
            "# room on a sleeve (sleeve: 415 mm), what it is kept for (for: [elbow_flexion, bench-press]), and whether it goes to",
            "# another rack height with its plates on (moves: loaded).", "bars:");
        foreach (var bar in kit.Bars)
        {
            Line(text, [.. Bar(bar)]);
        }

        Line(text, "");
    }

    private static void Plates(StringBuilder text, GymKit kit)
    {
        Line(text, "# Plates: the mass of one as it is marked, in kg or lb, then how many pairs of it there are. Where sleeves are short,",
            "# a plate can tell its thickness: 20 kg: {pairs: 1, thickness: 27 mm}", kit.Plates.Count == 0 ? "plates: {}" : "plates:");
        foreach (var plate in kit.Plates)
        {
            Line(text, $"  {Plate(plate)}");
        }

        Line(text, "");
    }

    /// <summary>The lines of a bar in its list.</summary>
    public static IEnumerable<string> Bar(Bar bar) =>
    [
        $"  - name: {Quoted(bar.Name)}",
        $"    mass: {Exact(bar.Bare)}",
        .. bar.Collar is { } collar ? [$"    collars: {Exact(collar)}"] : Array.Empty<string>(),
        .. bar.Sleeve is { } sleeve ? [$"    sleeve: {Lengths.Text(sleeve)}"] : Array.Empty<string>(),
        .. bar.IsKept ? [$"    for: [{string.Join(", ", bar.Motions.Select(YamlValues.MotionWord).Concat(bar.Exercises))}]"] : Array.Empty<string>(),
        .. bar.MovesLoaded ? ["    moves: loaded"] : Array.Empty<string>(),
    ];

    /// <summary>A kind of plates as a field.</summary>
    public static string Plate(PlatePairs plate) => plate.Thickness is { } thickness
        ? $"{Exact(plate.Mass)}: {{pairs: {Whole(plate.Pairs)}, thickness: {Lengths.Text(thickness)}}}"
        : $"{Exact(plate.Mass)}: {Whole(plate.Pairs)}";

    /// <summary>The lines of a kind of handle in its list.</summary>
    public static IEnumerable<string> Handle(Handle handle) =>
    [
        $"  - name: {Quoted(handle.Bar.Name)}",
        $"    mass: {Exact(handle.Bar.Mass)}",
        $"    count: {Whole(handle.Count)}",
        .. handle.Bar.Sleeve is { } sleeve ? [$"    sleeve: {Lengths.Text(sleeve)}"] : Array.Empty<string>(),
        .. handle.Plates switch
        {
            null => [],
            [] => ["    plates: {}"],
            var plates => plates.Select(p => $"      {Plate(p)}").Prepend("    plates:"),
        },
    ];

    /// <summary>The lines of a machine in its list.</summary>
    public static IEnumerable<string> Machine(Machine machine) =>
    [
        $"  - name: {machine.Name}",
        $"    stack: {Flow(machine.Positions)}",
        .. machine.AddOns.Count > 0 ? [$"    add_ons: {Flow(machine.AddOns)}"] : Array.Empty<string>(),
    ];

    /// <summary>The lines of a band in its list.</summary>
    public static IEnumerable<string> Band(Band band) =>
        [$"  - name: {Quoted(band.Name)}", .. band.Help is { } help ? [$"    help: {Exact(help)}"] : Array.Empty<string>()];

    /// <summary>Masses as a list on one line.</summary>
    public static string Flow(IEnumerable<Mass> masses) => $"[{string.Join(", ", masses.Select(Exact))}]";

    /// <summary>The belt as a field, or a comment where nothing need be said.</summary>
    public static string Belt(Belt? belt) => belt switch { null => "belt: no", { Mass: { } mass } => $"belt: {Exact(mass)}", _ => "belt: yes" };

    // All decimals: what a person reads of a mass may be shorter.
    private static string Exact(Mass mass) => $"{mass.Amount.ToString("0.############################", CultureInfo.InvariantCulture)} {mass.Symbol}";

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static void Handles(StringBuilder text, GymKit kit)
    {
        Line(text, "# Adjustable dumbbells: a handle's mass with its collars, and how many such handles there are. They take the plates",
            "# above, or those listed as their own plates.");
        List(text, "handles", kit.Handles.SelectMany(Handle));
    }

    private static void Machines(StringBuilder text, GymKit kit)
    {
        if (kit.StackAddOns.Count > 0)
        {
            Line(text, "# Small plates laid on the stack, one entry for each there is.", $"stack_add_ons: {Flow(kit.StackAddOns)}", "");
        }

        if (kit.Machines.Count > 0)
        {
            Line(text, "# Machines with stacks of their own, and the small plates laid on them.");
            List(text, "machines", kit.Machines.SelectMany(Machine));
        }
    }

    private static void Bands(StringBuilder text, GymKit kit)
    {
        if (kit.Bands.Count > 0)
        {
            Line(text, "# Bands, and about how much each carries at the bottom of a pull-up, where somebody has measured it.");
            List(text, "bands", kit.Bands.SelectMany(Band));
        }
    }

    private static void Belt(StringBuilder text, GymKit kit) => Line(text,
        "# A belt that plates hang from: yes, no, or its own mass where that counts.", Belt(kit.Belt), "");

    private static void List(StringBuilder text, string name, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        Line(text, all.Count == 0 ? $"{name}: []" : $"{name}:");
        Line(text, [.. all, ""]);
    }

    private static void Masses(StringBuilder text, string comment, string name, IReadOnlyList<Mass> masses) =>
        Line(text, $"# {comment}", $"{name}: {Flow(masses)}", "");

    private static void Equipment(StringBuilder text, GymKit kit)
    {
        var words = kit.Equipment.Where(w => !EquipmentReader.IsImplied(w) && !kit.Machines.Any(m => m.Name == w) && !(w == "band" && kit.Bands.Count > 0)).Order(StringComparer.Ordinal).ToList();
        Line(text, "# What else there is, in the words of the exercise list. An exercise is offered only where all it needs is here.",
            words.Count == 0 ? "equipment: []" : "equipment:");
        foreach (var word in words)
        {
            Line(text, $"  - {Quoted(word)}");
        }

        Line(text, "");
    }

    /// <summary>A text as a YAML scalar: plain where it is plain words, else in double quotes (YAML 1.2.2, section 7.3.1).</summary>
    private static string Quoted(string text)
    {
        var plain = text.Length > 0 && char.IsAsciiLetter(text[0]) && !text.EndsWith(' ')
            && text.All(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '.');
        return plain ? text : "\"" + string.Concat(text.Select(Escaped)) + "\"";
    }

    private static string Escaped(char c) => c switch
    {
        '"' => "\\\"",
        '\\' => "\\\\",
        _ when char.IsControl(c) || c is '\u2028' or '\u2029' or '\uFEFF' or '\u0085' => $"\\u{(int)c:X4}",
        _ => c.ToString(),
    };

    private static void Line(StringBuilder text, params string[] lines)
    {
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }
    }
}
