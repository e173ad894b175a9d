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
        var rule = new ProgressRule(
            kind,
            fields.Optional("step", PlanWords.Step),
            fields.Optional("misses_before_lighter", PlanWords.Misses) ?? 3,
            fields.Optional("lighter_by", PlanWords.Percent) ?? 10)
        {
            RepsFirst = fields.Optional("reps_first", PlanWords.YesOrNo) ?? true,
            GrowBy = fields.Optional("grow_by", PlanWords.GrowBy) ?? 5,
            UpTo = fields.Optional("up_to", PlanWords.Total),
        };
        if (scheme is null || (before && !Fits(scheme, kind)) || !Reaches(scheme, rule))
        {
            return null;
        }

        NoteIdle(ProgressWords.Of(kind));
        return rule;
    }

    private static ProgressKind Natural(Scheme? scheme) => scheme switch
    {
        Scheme.Fixed => ProgressKind.StepWhenAllMet,
        Scheme.Range => ProgressKind.WorkUpRange,
        Scheme.Hold => ProgressKind.LongerHold,
        Scheme.Accumulate a when a.HighSeconds > a.LowSeconds => ProgressKind.LongerHold,
        _ => ProgressKind.None,
    };

    private bool Fits(Scheme scheme, ProgressKind kind)
    {
        var (rule, fitting) = (ProgressWords.Of(kind), ProgressWords.All.Where(w => w.Fits(scheme)).ToList());
        if (fitting.Contains(rule))
        {
            return true;
        }

        mistakes.Add(fields.LineOf("progress"), "progress", $"{rule.Word} does not fit {scheme.Text}", $"write {string.Join(" or ", fitting.Select(w => w.Word))}");
        return false;
    }

    /// <summary>Whether a total can grow at all: its ceiling is above it.</summary>
    private bool Reaches(Scheme scheme, ProgressRule rule)
    {
        if (rule is not { Kind: ProgressKind.GrowTotal, UpTo: { } upTo } || scheme is not Scheme.Total total || upTo > total.Reps)
        {
            return true;
        }

        mistakes.Add(fields.LineOf("up_to"), "up_to", $"{upTo} is not above the total of {total.Reps}", "write a larger number, or leave it out");
        return false;
    }

    // A field that can have no effect was written in the belief that it has one.
    private void NoteIdle(ProgressWord rule)
    {
        foreach (var idle in ProgressWords.All.SelectMany(w => w.Fields).Distinct().Where(f => fields.Has(f) && !rule.Fields.Contains(f)))
        {
            mistakes.Add(fields.LineOf(idle), idle, $"has no effect with progress: {rule.Word}", "leave it out");
        }
    }
}
