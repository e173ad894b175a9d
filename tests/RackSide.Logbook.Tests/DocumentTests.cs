using LiteDB;
using RackSide.Logbook.Documents;
using RackSide.Logbook.Storing;
using RackSide.Training.Exercises;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Tests;

public class DocumentTests
{
    [Fact]
    public void Every_write_comes_back_as_it_went_in() =>
        Gens.AnyEntry.Sample(e => Same.Are(e, Entries.FromBytes(Entries.ToBytes(e))), iter: 3000);

    [Fact]
    public void Every_kind_of_fact_is_generated_so_that_none_is_left_untried()
    {
        var tried = new HashSet<Type>();
        Gens.Fact.Sample(f => { tried.Add(f.GetType()); }, iter: 500, threads: 1);

        var known = typeof(Fact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Fact)));
        tried.Should().BeEquivalentTo(known);
    }

    [Fact]
    public void Every_kind_of_scheme_is_generated_too()
    {
        var tried = new HashSet<Type>();
        Gens.Scheme.Sample(s => { tried.Add(s.GetType()); }, iter: 500, threads: 1);

        tried.Should().BeEquivalentTo(typeof(Scheme).GetNestedTypes());
    }

    [Fact]
    public void Every_member_of_a_closed_list_has_a_word()
    {
        HasWords(Words.Units);
        HasWords(Words.DayKinds);
        HasWords(Words.SetKinds);
        HasWords(Words.Motions);
        HasWords(Words.ReasonsAway);
        HasWords(Words.Lengths);
        HasWords(Words.FormulaSexes);
        HasWords(Words.Activities);
        HasWords(Words.Sorenesses);
        HasWords(Words.Sides);

        static void HasWords<T>(Words<T> words)
            where T : struct, Enum => Enum.GetValues<T>().Should().OnlyContain(v => words.Of(v).AsString.Length > 0);
    }

    [Fact]
    public void A_lifter_keeps_PIN_plan_and_look_and_one_of_before_there_were_any_has_none()
    {
        var chosen = new Lifter("second", "Bram Okafor-Lind", MassUnit.Pound, Instant.FromUtc(2026, 3, 4, 18, 0))
        {
            Pin = "pbkdf2-sha256:1:00:00",
            Plan = "light",
            Look = "contrast",
        };
        var document = Lifters.Of(chosen);
        Lifters.Read(document).Should().Be(chosen);

        foreach (var later in new[] { "pin", "plan", "look", "look" })
        {
            document.Remove(later);
        }

        Lifters.Read(document).Should().Be(chosen with { Pin = null, Plan = null, Look = null });
    }

    [Fact]
    public void A_lifter_written_before_there_was_anything_on_the_body_reads_as_having_told_nothing()
    {
        var ottoline = new Lifter("first", "Ottoline Marsh", MassUnit.Kilogram, Instant.FromUtc(2026, 11, 1, 18, 0));

        Lifters.Of(ottoline).Keys.Should().Equal("key", "name", "unit", "joined", "cautions-read", "avoid-inverted", "pin", "plan", "look");
        Lifters.Read(Lifters.Of(ottoline)).Should().Be(ottoline);
    }

    [Fact]
    public void A_reason_written_before_it_had_inputs_and_advice_reads_as_having_none()
    {
        var read = Reasons.Read(new BsonDocument { ["code"] = "all-met", ["line"] = "all 5x5 done" });

        (read.Inputs.Count, read.Advice).Should().Be((0, null));
        Reasons.Of(read).Keys.Should().Equal("code", "line");
    }

    [Fact]
    public void A_mass_finer_than_a_thousandth_is_refused_not_rounded()
    {
        var act = () => Masses.Of(Mass.Kg(20.0001m));

        act.Should().Throw<ArgumentException>();
    }

    [Fact]
    public void A_missing_number_is_damage_and_not_a_set_of_no_reps()
    {
        var document = Facts.Of(Tollbooth.Set(new FactId("k3f9pz", 2)));
        document.Remove("done");

        var act = () => Facts.Read(document);

        act.Should().Throw<InvalidDataException>().WithMessage("*'done'*");
    }

    [Fact]
    public void A_changed_field_breaks_the_checksum()
    {
        var document = Checksums.Seal(Facts.Of(Tollbooth.Set(new FactId("k3f9pz", 2))));
        document["done"] = 6;

        var act = () => Checksums.Check(document);

        act.Should().Throw<InvalidDataException>();
    }

    // Source: the CRC catalogue's check value for CRC-32/ISO-HDLC over the digits 1 to 9 (from memory).
    [Fact]
    public void The_checksum_is_the_standard_one() =>
        System.IO.Hashing.Crc32.HashToUInt32("123456789"u8).Should().Be(0xCBF43926);

    [Fact]
    public void A_document_of_a_newer_format_is_not_read()
    {
        var document = new About("k3f9pz", 0, 0, 0, 0, 0, 0).ToDocument();
        document["format"] = About.Format + 1;

        var act = () => About.Read(document);

        act.Should().Throw<NewerFormatException>();
    }
}
