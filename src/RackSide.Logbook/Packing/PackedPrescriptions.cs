using RackSide.Logbook.Documents;
using RackSide.Training.History;
using RackSide.Training.Loading;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Packing;

/// <summary>What a slot asked for, packed.</summary>
internal static class PackedPrescriptions
{
    /// <summary>Writes a prescription.</summary>
    public static void Write(Prescription asked, PackWriter to)
    {
        to.Word(asked.Slot);
        to.Word(Words.Motions, asked.Motion);
        to.Word(asked.Exercise);
        Write(asked.Scheme, to);
        to.Several(asked.Targets, target => to.Number(target));
        to.Number(asked.SetsLeftOut);
        to.Flag(asked.AsksFirst);
        to.Flag(asked.EachSide);
        to.Mass(asked.Load);
        to.Several(asked.Ramp, set => Write(set, to));
        to.Flag(asked.Search is not null);
        if (asked.Search is { } search)
        {
            to.Document(Searches.Of(search));
        }

        to.Length(asked.Rest);
        to.WordOrNone(asked.Group);
        to.Length(asked.ChangeOver);
        Write(asked.Why, to);
    }

    /// <summary>Reads a prescription.</summary>
    public static Prescription Read(PackReader from) => new()
    {
        Slot = from.Word(),
        Motion = from.Word(Words.Motions),
        Exercise = from.Word(),
        Scheme = Scheme(from),
        Targets = from.Several(from.Int),
        SetsLeftOut = from.Int(),
        AsksFirst = from.Flag(),
        EachSide = from.Flag(),
        Load = from.MassOrNone(),
        Ramp = from.Several(() => new RampSet(from.Mass(), from.Int())),
        Search = from.Flag() ? Searches.Read(from.Document()) : null,
        Rest = from.Length(),
        Group = from.WordOrNone(),
        ChangeOver = from.Length(),
        Why = Reason(from),
    };

    private static void Write(RampSet set, PackWriter to)
    {
        to.Mass(set.Load);
        to.Number(set.Reps);
    }

    private static void Write(Scheme scheme, PackWriter to)
    {
        (string Is, int[] Numbers) form = scheme switch
        {
            Scheme.Fixed s => ("fixed", [s.Sets, s.Reps]),
            Scheme.Range s => ("range", [s.Sets, s.Low, s.High]),
            Scheme.Hold s => ("hold", [s.Sets, s.LowSeconds, s.HighSeconds]),
            Scheme.Total s => ("total", [s.Reps]),
            Scheme.Accumulate s => ("accumulate", [s.LowSeconds, s.HighSeconds]),
            Scheme.Tick s => ("tick", [s.Minutes]),
            _ => throw new ArgumentException($"no form for {scheme.GetType()}", nameof(scheme)),
        };
        to.Word(form.Is);
        Array.ForEach(form.Numbers, number => to.Number(number));
    }

    private static Scheme Scheme(PackReader from) => from.Word() switch
    {
        "fixed" => new Scheme.Fixed(from.Int(), from.Int()),
        "range" => new Scheme.Range(from.Int(), from.Int(), from.Int()),
        "hold" => new Scheme.Hold(from.Int(), from.Int(), from.Int()),
        "total" => new Scheme.Total(from.Int()),
        "accumulate" => new Scheme.Accumulate(from.Int(), from.Int()),
        "tick" => new Scheme.Tick(from.Int()),
        var other => throw new FormatException($"no scheme '{other}'"),
    };

    private static void Write(Reason why, PackWriter to)
    {
        to.Word(why.Code);
        to.Word(why.Line);
        to.WordOrNone(why.Advice);
        to.Several(why.Inputs, input => Write(input, to));
    }

    private static Reason Reason(PackReader from) => new(from.Word(), from.Word())
    {
        Advice = from.WordOrNone(),
        Inputs = from.Several(() => new ReasonInput(from.Word(), from.Number() / 1000m, from.Word())),
    };

    private static void Write(ReasonInput input, PackWriter to)
    {
        to.Word(input.Name);
        to.Number((long)decimal.Round(input.Amount * 1000));
        to.Word(input.Unit);
    }
}
