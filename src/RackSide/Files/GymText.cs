using System.Globalization;
using System.Text;
using RackSide.Pages.Settings;
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
        Masses(text, "Positions of the weight stack; none where there is no machine.", "stack", rules.Kit.Stack);
        Equipment(text, rules.Kit);
        Line(text, "# Whether the bell may ring: on or off.", $"sound: {(rules.Sound ? "on" : "off")}", "");
        Screen(text, rules);
        Line(text, "# The weekday that a shown week begins with: monday, sunday or saturday.", $"week_starts: {rules.WeekStarts.ToString().ToLowerInvariant()}", "");
        Line(text, "# The gym's time zone, such as Europe/London; where none is written, that of the machine.",
            rules.Zone is { } zone ? $"time_zone: {zone.Id}" : "# time_zone: Europe/London");
        return text.ToString();
    }

    private static void Head(StringBuilder text, HouseRules rules)
    {
        Line(text, "# House rules of this gym. Change them here or on the set-up screen; they are read each time the program starts.", "");
        Line(text, "# The unit marked on the plates: kg or lb.", $"unit: {rules.Kit.Unit.Symbol()}", "");
        var days = rules.TrainingDays.Select(d => d.ToString().ToLowerInvariant());
        Line(text, "# The weekdays people train on, with at least a day of rest between. The word rolling in place of the list has each",
            "# training day come its rest days after the one before, whatever the weekday.", $"training_days: {(rules.Rolls ? "rolling" : $"[{string.Join(", ", days)}]")}", "");
    }

    private static void Screen(StringBuilder text, HouseRules rules)
    {
        var fields = ScreenText.Fields(rules.Screen, rules.Sound).ToDictionary(f => f.Field, f => f.Lines);
        Line(text, "# A program that is run beside the bell, with its arguments, and without a shell; [] for none.",
            $"alarm_command: [{string.Join(", ", rules.AlarmCommand.Select(Quoted))}]", "");
        Line(text, ["# Colours: hues, grey or contrast.", .. fields["look"], ""]);
        Line(text, ["# The signs a page is drawn with: auto goes by the locale, blocks, or ascii.", .. fields["signs"], ""]);
        Line(text, ["# Only the load and reps or the clock, as large as can be, and the keys: on or off.", .. fields["big"], ""]);
        Line(text, ["# Whether the bar flashes when a rest is over: on or off; off, it stands still.", .. fields["flash"], ""]);
        Line(text, ["# Keys beside those of the numeric pad, which stay, such as undo: [u, backspace]. A verb that is not named keeps its own.",
            $"# The verbs: {string.Join(", ", KeyLayout.Verbs.Select(KeyLayout.WordOf))}.", .. fields["keys"], ""]);
    }

    private static void Bars(StringBuilder text, GymKit kit)
    {
        Line(text, "# Bars, the one used by default first; the mass with whatever collars are always on it.", "bars:");
        foreach (var bar in kit.Bars)
        {
            Line(text, $"  - name: {Quoted(bar.Name)}", $"    mass: {bar.Mass}");
        }

        Line(text, "");
    }

    private static void Plates(StringBuilder text, GymKit kit)
    {
        Line(text, "# Plates: the mass of one, then how many pairs of it there are.", kit.Plates.Count == 0 ? "plates: {}" : "plates:");
        foreach (var plate in kit.Plates)
        {
            Line(text, $"  {plate.Mass}: {plate.Pairs.ToString(CultureInfo.InvariantCulture)}");
        }

        Line(text, "");
    }

    private static void Masses(StringBuilder text, string comment, string name, IReadOnlyList<Mass> masses) =>
        Line(text, $"# {comment}", $"{name}: [{string.Join(", ", masses)}]", "");

    private static void Equipment(StringBuilder text, GymKit kit)
    {
        var words = kit.Equipment.Where(w => !EquipmentReader.IsImplied(w)).Order(StringComparer.Ordinal).ToList();
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
