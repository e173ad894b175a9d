using LiteDB;
using RackSide.Training.History;

namespace RackSide.Logbook.Documents;

/// <summary>
/// A reason as shown that day. Its inputs and its advice came later than its line: they stand only where there are any, and
/// a document without them reads as having none.
/// </summary>
internal static class Reasons
{
    /// <summary>The document for a reason.</summary>
    public static BsonDocument Of(Reason why)
    {
        BsonDocument document = new() { ["code"] = why.Code, ["line"] = why.Line };
        if (why.Inputs.Count > 0)
        {
            document["inputs"] = new BsonArray(why.Inputs.Select(Of));
        }

        if (why.Advice is { } advice)
        {
            document["advice"] = advice;
        }

        return document;
    }

    /// <summary>The reason of a document.</summary>
    /// <exception cref="InvalidDataException">It is none.</exception>
    public static Reason Read(BsonDocument document) => new(document.Text("code"), document.Text("line"))
    {
        Inputs = document.ContainsKey("inputs") ? [.. document.Inners("inputs").Select(Input)] : [],
        Advice = document.TextOrNull("advice"),
    };

    private static BsonDocument Of(ReasonInput input) => new()
    {
        ["name"] = input.Name,
        ["thousandths"] = (long)decimal.Round(input.Amount * 1000),
        ["unit"] = input.Unit,
    };

    private static ReasonInput Input(BsonDocument document) =>
        new(document.Text("name"), document.Long("thousandths") / 1000m, document.Text("unit"));
}
