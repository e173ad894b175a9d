using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using NJsonSchema;
using RackSide.Files;
using RackSide.Training.Exercises;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace RackSide.Tests.Files;

/// <summary>
/// docs/plan.schema.json helps in an editor, so it must know what the reader knows: the same fields, exercises and ladders, no
/// plan refused that is good, and what a schema can catch caught. The validator knows nothing of RackSide.
/// </summary>
public class PlanSchemaTests
{
    private static readonly Catalogue Catalogue = CatalogueFile.Read();
    private static readonly string Written = File.ReadAllText(Path.Combine(Root(), "docs", "plan.schema.json"));
    private static readonly JsonSchema Schema = JsonSchema.FromJsonAsync(Written).GetAwaiter().GetResult();

    // What compares two places of a file, or needs the catalogue, arithmetic or the bytes, is the reader's alone.
    private static readonly string[] BeyondASchema =
    [
        "alias-and-anchor", "decimal-comma", "exercise-held-but-reps-asked", "exercise-of-another-motion", "group-of-one", "group-of-unequal-sets", "group-torn-apart",
        "hold-backwards", "hold-of-hours", "key-twice", "not-utf-8", "progress-that-does-not-fit", "ramp-of-a-hold", "reps-backwards", "rolling-without-rest",
        "step-too-large", "total-that-cannot-grow",
    ];

    public static TheoryData<string> GoodPlans =>
    [
        PlanFile.DefaultText,
        .. ShippedPlans.Names.Select(ShippedPlans.Text),
        File.ReadAllText(Path.Combine(Root(), "docs", "plan-files.md")).Split("```yaml\n")[1].Split("```")[0],
    ];

    [Theory]
    [MemberData(nameof(GoodPlans))]
    public void A_good_plan_is_not_refused(string text)
    {
        PlanFile.Read(text, "plan.yaml", Catalogue).Mistakes.Should().BeEmpty();
        Schema.Validate(Json(text)).Should().BeEmpty();
    }

    [Fact]
    public void Of_the_broken_plans_it_refuses_those_that_a_schema_can()
    {
        var let = new List<string>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root(), "tests", "RackSide.Tests", "Files", "BrokenPlans"), "*.yaml").Order(StringComparer.Ordinal))
        {
            if (TryJson(File.ReadAllText(file)) is { } json && Schema.Validate(json).Count == 0)
            {
                let.Add(Path.GetFileNameWithoutExtension(file));
            }
        }

        let.Should().Equal(BeyondASchema);
    }

    [Theory]
    [InlineData("", "properties")]
    [InlineData("days: {a: {FIELD: 1}}", "definitions/day/properties")]
    [InlineData("days: {a: {slots: [{FIELD: 1}]}}", "definitions/slot/properties")]
    public void Its_fields_are_those_of_the_reader_and_the_other_way_round(string around, string where)
    {
        const string unheard = "zzzzzzzzzzzzzzzzzzzzzzzz";
        var text = around.Length == 0 ? $"{unheard}: 1" : around.Replace("FIELD", unheard, StringComparison.Ordinal);
        var told = PlanFile.Read(text, "plan.yaml", Catalogue).Mistakes.Single(m => m.Field == unheard).Right;
        var fields = where.Split('/').Aggregate(JsonNode.Parse(Written)!, (node, name) => node[name]!).AsObject().Select(p => p.Key);

        fields.Should().BeEquivalentTo(told["the fields are ".Length..].Split(", "));
    }

    [Fact]
    public void Its_exercises_ladders_and_rules_are_those_there_are()
    {
        var schema = JsonNode.Parse(Written)!;
        schema["definitions"]!["exercise"]!["enum"] = List(Catalogue.All.Select(e => e.Id));
        var slot = schema["definitions"]!["slot"]!["properties"]!;
        slot["progress"]!["enum"] = List(ProgressWords.All.Select(w => w.Word));
        slot["ladder"]!["enum"] = List(Catalogue.Ladders.Select(l => l.Key));
        slot["begin_with"]!["enum"] = List(Catalogue.Ladders.SelectMany(l => l.Rungs).Select(r => r.Exercise).Distinct());
        var made = schema.ToJsonString(new JsonSerializerOptions { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }) + "\n";
        if (Environment.GetEnvironmentVariable("RACKSIDE_ACCEPT") == "1")
        {
            File.WriteAllText(Path.Combine(Root(), "docs", "plan.schema.json"), made);
        }

        Written.Should().Be(made, "docs/plan.schema.json lists the catalogue; after a change of it run with RACKSIDE_ACCEPT=1");
    }

    private static JsonArray List(IEnumerable<string> words) => [.. words.Select(w => JsonValue.Create(w))];

    private static string? TryJson(string text)
    {
        try
        {
            return Json(text);
        }
        catch (Exception e) when (e is YamlException or InvalidOperationException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>A YAML text as JSON, its plain scalars by the core schema of YAML 1.2 (chapter 10.3.2): null, true and false, numbers, else text.</summary>
    private static string Json(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return Node(stream.Documents[0].RootNode)?.ToJsonString() ?? "null";
    }

    private static JsonNode? Node(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Node(c.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Node)]),
        YamlScalarNode { Style: ScalarStyle.Plain } plain => Plain(plain.Value!),
        YamlScalarNode other => JsonValue.Create(other.Value),
        _ => throw new InvalidOperationException(node.ToString()),
    };

    private static JsonValue? Plain(string text) =>
        text is "" or "null" or "~" ? null
        : text is "true" or "false" ? JsonValue.Create(text == "true")
        : long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var whole) ? JsonValue.Create(whole)
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? JsonValue.Create(number)
        : JsonValue.Create(text);

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
