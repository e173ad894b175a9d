using RackSide.Training.History;

namespace RackSide.Logbook.Packing;

/// <summary>
/// A session as bytes inside its document. As a document of documents it takes four times the room, and reading it twenty
/// times the memory: each set would bring the names of its fields and a dictionary.
/// </summary>
internal static class PackedSessions
{
    // It grows when the bytes change; older forms are read as long as a log may hold them.
    private const long Form = 1;

    /// <summary>The bytes of a session.</summary>
    public static byte[] Of(SessionRecord session)
    {
        var to = new PackWriter();
        to.Number(Form);
        PackedHeads.Write(session.Head, to);
        to.Several(session.Facts, fact => PackedFacts.Write(fact, to));
        return to.ToArray();
    }

    /// <summary>The session of those bytes.</summary>
    /// <exception cref="InvalidDataException">They are none.</exception>
    public static SessionRecord Read(byte[] bytes) => PackReader.Read(bytes, "a session", from => from.Number() == Form
        ? new SessionRecord(PackedHeads.Read(from), from.Several(() => PackedFacts.Read(from)))
        : throw new FormatException("an unknown form"));
}
