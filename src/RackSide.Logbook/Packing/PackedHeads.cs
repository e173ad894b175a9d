using RackSide.Logbook.Documents;
using RackSide.Training.History;

namespace RackSide.Logbook.Packing;

/// <summary>What was settled when a session began, packed.</summary>
internal static class PackedHeads
{
    /// <summary>Writes a head.</summary>
    public static void Write(SessionHead head, PackWriter to)
    {
        to.Id(head.Id);
        to.At(head.Begun);
        to.Date(head.Date);
        to.Word(head.Zone);
        to.Word(head.Lifter);
        to.Word(head.Plan);
        to.Word(head.DayKey);
        to.Word(head.DayName);
        to.Word(Words.DayKinds, head.Kind);
        to.Several(head.Prescriptions, asked => PackedPrescriptions.Write(asked, to));
    }

    /// <summary>Reads a head.</summary>
    public static SessionHead Read(PackReader from) => new()
    {
        Id = from.Id(),
        Begun = from.At(),
        Date = from.Date(),
        Zone = from.Word(),
        Lifter = from.Word(),
        Plan = from.Word(),
        DayKey = from.Word(),
        DayName = from.Word(),
        Kind = from.Word(Words.DayKinds),
        Prescriptions = from.Several(() => PackedPrescriptions.Read(from)),
    };
}
