using System.Text;
using System.Text.Json.Nodes;
using NJsonSchema;
using RackSide.Logbook.Storing;

namespace RackSide.Logbook.Tests;

/// <summary>Exports hold to the published JSON Schema, docs/record.schema.json, by a library that knows nothing of RackSide.</summary>
public class SchemaTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromFileAsync(Path.Combine(AppContext.BaseDirectory, "Reference", "record.schema.json")).GetAwaiter().GetResult();

    [Fact]
    public void Whatever_is_exported_holds_to_the_schema()
    {
        var kinds = new HashSet<string>();
        Gens.Entry.List[1, 10].Sample(
            entries =>
            {
                var contents = new Contents("k3f9pz");
                foreach (var entry in entries)
                {
                    contents.Take(entry is Entry.FactAdded added && contents.Sessions.LastOrDefault() is { } session ? added with { Session = session.Head.Id } : entry);
                }

                var record = Encoding.UTF8.GetString(LogbookRecord.Write(new LogbookSnapshot(contents), null, Tollbooth.Evening));
                lock (kinds)
                {
                    kinds.UnionWith(contents.Told.Select(t => t.Fact.GetType().Name));
                }

                var wrong = Schema.Validate(record);
                return wrong.Count == 0 ? true : throw new InvalidOperationException($"{wrong.First()} in {record}");
            },
            iter: 250);
        kinds.Should().HaveCount(typeof(Fact).Assembly.GetTypes().Count(t => t.IsSubclassOf(typeof(Fact))), "every kind of fact was tried");
    }

    [Theory]
    [InlineData("""{"format":"rackside-record","version":2}""")]
    [InlineData("""{"lifters":[{"key":"ottoline"}]}""")]
    [InlineData("""{"made":"yesterday"}""")]
    [InlineData("""{"weighIns":[{"id":"k3f9pz-1","lifter":"ottoline","date":"2026-03-04","weight":{"amount":70,"unit":"st"}}]}""")]
    [InlineData("""{"told":[{"lifter":"ottoline","fact":{"is":"flown","id":"k3f9pz-1","at":"2026-03-04T18:00:00Z"}}]}""")]
    [InlineData("""{"told":[{"lifter":"ottoline","fact":{"is":"reps-left","id":"k3f9pz-1","at":"2026-03-04T18:00:00Z","set":"k3f9pz-2"}}]}""")]
    [InlineData("""{"more":1}""")]
    public void What_is_no_record_does_not_hold_to_it(string changes)
    {
        var record = JsonNode.Parse(LogbookRecord.Write(LogbookSnapshot.Nothing, null, Tollbooth.Evening))!.AsObject();
        Schema.Validate(record.ToJsonString()).Should().BeEmpty();
        foreach (var (name, value) in JsonNode.Parse(changes)!.AsObject())
        {
            record[name] = value?.DeepClone();
        }

        Schema.Validate(record.ToJsonString()).Should().NotBeEmpty();
    }

    [Fact]
    public void No_field_of_the_whole_may_be_missing()
    {
        var record = JsonNode.Parse(LogbookRecord.Write(LogbookSnapshot.Nothing, null, Tollbooth.Evening))!.AsObject();
        foreach (var name in record.Select(p => p.Key).ToList())
        {
            var less = record.DeepClone().AsObject();
            less.Remove(name);
            Schema.Validate(less.ToJsonString()).Should().NotBeEmpty(name);
        }
    }
}
