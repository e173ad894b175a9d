using System.Text;
using System.Text.Json;
using RackSide.Logbook.Records;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>A record as JSON: nothing is lost in it, and a person can read it.</summary>
public class RecordTests
{
    [Fact]
    public void Whatever_was_written_comes_back_from_its_record() =>
        Gens.Entry.List[1, 12].Sample(
            entries =>
            {
                var contents = Of(entries);
                var back = LogbookRecord.Read(LogbookRecord.Write(new LogbookSnapshot(contents), null, Tollbooth.Evening)).Contents;
                return back.Rack == contents.Rack && back.Lifters.OrderBy(l => l.Key, StringComparer.Ordinal).SequenceEqual(contents.Lifters.Select(l => l with { Pin = null }).OrderBy(l => l.Key, StringComparer.Ordinal))
                    && All(back.Sessions, contents.Sessions, s => s.Head.Id, (a, b) => Same.Are(a.Head, b.Head) && a.Facts.Zip(b.Facts).All(p => Same.Are(p.First, p.Second)) && a.Facts.Count == b.Facts.Count)
                    && All(back.Weights, contents.Weights, w => w.Id, (a, b) => a == b)
                    && All(back.Told, contents.Told, t => t.Fact.Id, (a, b) => a.Lifter == b.Lifter && Same.Are(a.Fact, b.Fact));
            },
            iter: 400);

    [Fact]
    public void A_field_goes_by_one_name_in_both_directions()
    {
        foreach (var field in new[] { "is", "sets-left-out", "most-at-once", "change-over", "thousandths", "day-name", "cautions-read" })
        {
            FieldForms.Stored(FieldForms.Shown(field, isLength: false)).Should().Be(field);
            FieldForms.Stored(FieldForms.Shown(field, isLength: field != "thousandths")).Should().Be(field);
        }
    }

    [Fact]
    public void A_person_reads_dates_loads_and_times()
    {
        var contents = new Contents("k3f9pz");
        contents.Take(new Entry.LifterKept(Tollbooth.Ottoline));
        contents.Take(new Entry.SessionBegun(Tollbooth.Head(new FactId("k3f9pz", 1))));
        contents.Take(new Entry.FactAdded(new FactId("k3f9pz", 1), Tollbooth.Set(new FactId("k3f9pz", 2))));
        contents.Take(new Entry.FactAdded(new FactId("k3f9pz", 1), new RestChanged(new FactId("k3f9pz", 3), Tollbooth.Evening, null, Duration.FromSeconds(90.5))));

        using var json = JsonDocument.Parse(LogbookRecord.Write(new LogbookSnapshot(contents), "ottoline", Tollbooth.Evening));

        var session = json.RootElement.GetProperty("sessions")[0];
        session.GetProperty("head").GetProperty("date").GetString().Should().Be("2026-03-04");
        session.GetProperty("head").GetProperty("prescriptions")[0].GetProperty("restSeconds").GetDecimal().Should().Be(120);
        var set = session.GetProperty("facts")[0];
        set.GetProperty("id").GetString().Should().Be("k3f9pz-2");
        set.GetProperty("at").GetString().Should().Be("2026-03-04T18:01:00Z");
        set.GetProperty("load").GetRawText().Where(c => !char.IsWhiteSpace(c)).Should().Equal("""{"amount":42.5,"unit":"kg"}""");
        session.GetProperty("facts")[1].GetProperty("leftSeconds").GetDecimal().Should().Be(90.5m);
        json.RootElement.GetProperty("version").GetInt32().Should().Be(1);
    }

    [Fact]
    public void One_lifters_record_has_nothing_of_the_others()
    {
        var contents = new Contents("k3f9pz");
        contents.Take(new Entry.LifterKept(Tollbooth.Ottoline));
        contents.Take(new Entry.LifterKept(Tollbooth.Bram));
        contents.Take(new Entry.SessionBegun(Tollbooth.Head(new FactId("k3f9pz", 1))));
        contents.Take(new Entry.WeightKept(new KeptWeight(new FactId("k3f9pz", 2), "bram", Tollbooth.Wednesday, Mass.Lb(190))));

        var bram = Encoding.UTF8.GetString(LogbookRecord.Write(new LogbookSnapshot(contents), "bram", Tollbooth.Evening));

        bram.Should().Contain("Bram Okafor-Lind").And.Contain("190").And.NotContain("ttoline");
    }

    [Theory]
    [InlineData("not json", "this is not JSON*")]
    [InlineData("[]", "*\"the file\"*")]
    [InlineData("""{"format":"a shopping list","version":1}""", "*its format is not \"rackside-record\"*")]
    [InlineData("""{"format":"rackside-record","version":2}""", "*its version is not 1; a newer RackSide wrote it*")]
    [InlineData("""{"format":"rackside-record","version":1,"lifters":[]}""", "*the field \"weighIns\" is missing*")]
    [InlineData("""{"format":"rackside-record","version":1,"lifters":[{"key":7}],"sessions":[],"weighIns":[],"told":[]}""", "*'key'*")]
    [InlineData("""{"format":"rackside-record","version":1,"lifters":[],"sessions":[],"told":[],"weighIns":[{"id":"k","lifter":"bram","date":"soon","weight":{"amount":1,"unit":"kg"}}]}""", "*\"id\"*")]
    public void What_is_no_record_is_told_and_nothing_is_guessed(string text, string sentence)
    {
        var act = () => LogbookRecord.Read(Encoding.UTF8.GetBytes(text));

        act.Should().Throw<LogbookUnreadableException>().WithMessage(sentence);
    }

    private static Contents Of(IEnumerable<Entry> entries)
    {
        var contents = new Contents("k3f9pz");
        foreach (var entry in entries)
        {
            // A fact is given to a session of the list, or else it would have nowhere to go.
            var home = entry is Entry.FactAdded added && contents.Sessions.LastOrDefault() is { } session ? added with { Session = session.Head.Id } : entry;
            contents.Take(home);
        }

        return contents;
    }

    private static bool All<T>(IEnumerable<T> a, IEnumerable<T> b, Func<T, FactId> id, Func<T, T, bool> same) =>
        a.OrderBy(id).ToList() is var x && b.OrderBy(id).ToList() is var y && x.Count == y.Count && x.Zip(y).All(p => same(p.First, p.Second));
}
