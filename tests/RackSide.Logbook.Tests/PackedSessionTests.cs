using LiteDB;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Packing;

namespace RackSide.Logbook.Tests;

/// <summary>Sessions as the log has kept them since format 5.</summary>
public class PackedSessionTests
{
    private static readonly Gen<SessionRecord> AnySession = Gen.Select(
        Gens.Head, Gens.Fact.List[0, 30], (head, facts) => new SessionRecord(head, facts));

    [Fact]
    public void Every_session_comes_back_as_it_went_in() =>
        AnySession.Sample(s => Same.Are(s, PackedSessions.Read(PackedSessions.Of(s))), iter: 2000);

    // Two ways to the same thing: what a log of format 4 held, and what one of format 5 holds.
    [Fact]
    public void Packed_and_written_out_it_is_the_same_session() =>
        AnySession.Sample(s => Same.Are(Sessions.Read(Sessions.WrittenOut(s)), Sessions.Read(Sessions.Of(s))), iter: 500);

    // A change of these bytes would make every log on every rack unreadable, so it has to be meant: a new form, with the old one still read.
    [Fact]
    public void The_bytes_of_a_session_stay_what_they_are()
    {
        var id = new FactId("k3f9pz", 1);
        var session = new SessionRecord(Tollbooth.Head(id), [Tollbooth.Set(new FactId("k3f9pz", 2)), new SessionClosed(new FactId("k3f9pz", 3), Tollbooth.Evening)]);

        Convert.ToHexStringLower(PackedSessions.Of(session)).Should().Be(
            "0e066b336639707a0d4575726f70652f4c6f6e646f6e086f74746f6c696e651154776f20737472656e677468206461797301"
            + "610a537472656e677468204108737472656e6774680573717561740a6261636b2d7371756174056669786564026b6707616c"
            + "6c2d6d657423616c6c2035783520646f6e65206f6e204d6f6e6461793a20322e35206b67206d6f726507776f726b696e6702"
            + "000280c0f2aabc88fd3ea097a91301020304050602070708090a0a0a0a0a0a0a0a000000018898050a0401c0b8020a1401e8"
            + "fb030a060080b0b4f80800000b0c00000402000280989abc0407080d020a0a018898050a060002ff979abc04");
    }

    [Fact]
    public void The_date_stands_outside_for_the_index() =>
        Sessions.Of(new SessionRecord(Tollbooth.Head(new FactId("k3f9pz", 1)), []))["date"].Should().Be(new BsonValue(20260304));

    [Fact]
    public void A_session_written_out_keeps_integers_and_the_unit_that_was_loaded()
    {
        var document = Sessions.WrittenOut(new SessionRecord(Tollbooth.Head(new FactId("k3f9pz", 1)), [Tollbooth.Set(new FactId("k3f9pz", 2))]));

        var set = document["facts"][0];
        set["at"].IsInt64.Should().BeTrue();
        set["load"]["thousandths"].Should().Be(new BsonValue(42_500L));
        set["load"]["unit"].AsString.Should().Be("kg");
    }

    // The checksum of its document finds these first; this is for a checksum that happens to fit.
    [Fact]
    public void Damaged_bytes_are_told_as_damage_or_read_as_something_and_never_end_otherwise() =>
        Gen.Select(AnySession, Gen.Int[0, int.MaxValue], Gen.Byte).Sample((session, where, what) =>
        {
            var bytes = PackedSessions.Of(session);
            bytes[where % bytes.Length] = what;
            try
            {
                PackedSessions.Read(bytes);
            }
            catch (InvalidDataException)
            {
            }
        }, iter: 5000);

    [Fact]
    public void Bytes_that_were_cut_or_go_on_are_damage()
    {
        var bytes = PackedSessions.Of(new SessionRecord(Tollbooth.Head(new FactId("k3f9pz", 1)), [Tollbooth.Set(new FactId("k3f9pz", 2))]));

        foreach (var wrong in new[] { bytes[..^1], [.. bytes, (byte)0], [] })
        {
            var act = () => PackedSessions.Read(wrong);
            act.Should().Throw<InvalidDataException>();
        }
    }
}
