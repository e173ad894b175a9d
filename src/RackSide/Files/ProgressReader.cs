using RackSide.Training.Plans;

namespace RackSide.Files;

/// <summary>Reads a slot's rule of progress and checks that it fits the scheme.</summary>
internal sealed class ProgressReader(Fields fields, MistakeList mistakes)
{
    /// <summary>The rule; where the plan names none, the one natural to the scheme. Null where it has a mistake.</summary>
    public ProgressRule? Read(Scheme? scheme)
    {
        var before = fields.Has("progress");
        var kind = fields.Optional("progress", PlanWords.Progress) ?? Natural(scheme);
        var step = fields.Optional("step", PlanWords.Step);
        var misses = fields.Optional("misses_before_lighter", PlanWords.Misses);
        var lighter = fields.Optional("lighter_by", PlanWords.Percent);
        if (scheme is null || (before && !Fits(scheme, kind)))
        {
            return null;
        }

        NoteIdle(kind, "step");
        NoteIdle(kind, "misses_before_lighter");
        NoteIdle(kind, "lighter_by");
        return new ProgressRule(kind, step, misses ?? 3, lighter ?? 10);
    }

    private static ProgressKind Natural(Scheme? scheme) => scheme switch
    {
        Scheme.Fixed => ProgressKind.StepWhenAllMet,
        Scheme.Range => ProgressKind.WorkUpRange,
        Scheme.Hold => ProgressKind.LongerHold,
        _ => ProgressKind.None,
    };

    private bool Fits(Scheme scheme, ProgressKind kind)
    {
        var natural = Natural(scheme);
        if (kind == ProgressKind.None || kind == natural)
        {
            return true;
        }

        mistakes.Add(fields.LineOf("progress"), "progress", $"{Words(kind)} does not fit {scheme.Text}",
            natural == ProgressKind.None ? "write none" : $"write {Words(natural)} or none");
        return false;
    }

    // A field that can have no effect was written in the belief that it has one.
    private void NoteIdle(ProgressKind kind, string field)
    {
        if (fields.Has(field) && kind is ProgressKind.None or ProgressKind.LongerHold)
        {
            mistakes.Add(fields.LineOf(field), field, $"has no effect with progress: {Words(kind)}", "leave it out");
        }
    }

    private static string Words(ProgressKind kind) => kind switch
    {
        ProgressKind.StepWhenAllMet => "step when all met",
        ProgressKind.WorkUpRange => "work up the range",
        ProgressKind.LongerHold => "longer hold",
        _ => "none",
    };
}
