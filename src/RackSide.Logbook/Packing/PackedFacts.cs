using RackSide.Logbook.Documents;
using RackSide.Training.History;

namespace RackSide.Logbook.Packing;

/// <summary>Facts, packed. Those that come with every session have a form of their own; the others are kept as their documents.</summary>
internal static class PackedFacts
{
    // The forms are kept: none takes the number of another.
    private const int AsDocument = 0;
    private const int Set = 1;
    private const int SetOfASide = 2;
    private const int Closed = 3;
    private const int Ticked = 4;
    private const int Rest = 5;
    private const int Struck = 6;
    private const int Form = 7;
    private const int Weighed = 8;

    /// <summary>Writes a fact.</summary>
    public static void Write(Fact fact, PackWriter to)
    {
        switch (fact)
        {
            case SetDone f:
                Write(f, to);
                break;
            case SessionClosed:
                Begin(Closed, fact, to);
                break;
            case ItemTicked f:
                Begin(Ticked, fact, to);
                to.Word(f.Item);
                break;
            case RestChanged f:
                Write(f, to);
                break;
            case FactStruck f:
                Begin(Struck, fact, to);
                to.Id(f.Struck);
                break;
            case FormTold f:
                Begin(Form, fact, to);
                to.Id(f.Set);
                to.Flag(f.Slipped);
                break;
            case BodyWeighed f:
                Begin(Weighed, fact, to);
                to.Mass(f.Weight);
                break;
            default:
                to.Number(AsDocument);
                to.Document(Facts.Of(fact));
                break;
        }
    }

    /// <summary>Reads a fact.</summary>
    public static Fact Read(PackReader from) => from.Int() switch
    {
        AsDocument => Facts.Read(from.Document()),
        Set => SetDone(from),
        SetOfASide => SetDone(from) with { Side = from.Word(Words.Sides) },
        Closed => new SessionClosed(from.Id(), from.At()),
        Ticked => new ItemTicked(from.Id(), from.At(), from.Word()),
        Rest => new RestChanged(from.Id(), from.At(), from.Flag() ? from.At() : null, from.Length()),
        Struck => new FactStruck(from.Id(), from.At(), from.Id()),
        Form => new FormTold(from.Id(), from.At(), from.Id(), from.Flag()),
        Weighed => new BodyWeighed(from.Id(), from.At(), from.Mass()),
        var other => throw new FormatException($"no fact {other}"),
    };

    private static void Begin(int form, Fact fact, PackWriter to)
    {
        to.Number(form);
        to.Id(fact.Id);
        to.At(fact.At);
    }

    private static void Write(SetDone set, PackWriter to)
    {
        Begin(set.Side is null ? Set : SetOfASide, set, to);
        to.Word(set.Slot);
        to.Word(set.Exercise);
        to.Word(Words.SetKinds, set.Kind);
        to.Number(set.Number);
        to.Number(set.Target);
        to.Number(set.Done);
        to.Mass(set.Load);
        if (set.Side is { } side)
        {
            to.Word(Words.Sides, side);
        }
    }

    private static SetDone SetDone(PackReader from) => new(
        from.Id(), from.At(), from.Word(), from.Word(), from.Word(Words.SetKinds), from.Int(), from.Int(), from.Int(), from.MassOrNone());

    private static void Write(RestChanged rest, PackWriter to)
    {
        Begin(Rest, rest, to);
        to.Flag(rest.Ends is not null);
        if (rest.Ends is { } ends)
        {
            to.At(ends);
        }

        to.Length(rest.Left);
    }
}
