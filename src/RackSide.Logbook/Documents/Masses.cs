using LiteDB;
using RackSide.Training.Measures;

namespace RackSide.Logbook.Documents;

/// <summary>Masses as whole thousandths of the unit they were loaded in, with that unit: exact both ways.</summary>
internal static class Masses
{
    /// <summary>The document for a mass; null for none.</summary>
    /// <exception cref="ArgumentException">It has more than three decimals.</exception>
    public static BsonValue Of(Mass? mass) => mass is { } m
        ? new BsonDocument { ["thousandths"] = Thousandths(m), ["unit"] = Words.Units.Of(m.Unit) }
        : BsonValue.Null;

    /// <summary>A mass in thousandths of its unit.</summary>
    /// <exception cref="ArgumentException">It has more than three decimals; rounding it here would be a silent change.</exception>
    public static long Thousandths(Mass mass)
    {
        var thousandths = mass.Amount * 1000;
        return thousandths == decimal.Truncate(thousandths) && Math.Abs(thousandths) <= long.MaxValue
            ? (long)thousandths
            : throw new ArgumentException($"the logbook keeps at most three decimals, not {mass.Amount}", nameof(mass));
    }

    /// <summary>The mass of a field.</summary>
    public static Mass Mass(this BsonDocument document, string name) => Read(document.Inner(name));

    /// <summary>The mass of a document.</summary>
    public static Mass Read(BsonDocument document) =>
        new(document.Long("thousandths") / 1000m, Words.Units.Read(document, "unit"));

    /// <summary>The mass of a field, or null.</summary>
    public static Mass? MassOrNull(this BsonDocument document, string name) =>
        document[name].IsNull ? null : document.Mass(name);
}
