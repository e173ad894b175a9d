using LiteDB;
using RackSide.Training.Exercises;
using RackSide.Training.History;
using RackSide.Training.Measures;
using RackSide.Training.Plans;

namespace RackSide.Logbook.Documents;

/// <summary>
/// The words that stand in documents for values of a closed list. They are written out, because renaming a member in the
/// code must not change what an old logbook says.
/// </summary>
internal static class Words
{
    public static readonly Words<MassUnit> Units = new((MassUnit.Kilogram, "kg"), (MassUnit.Pound, "lb"));

    public static readonly Words<DayKind> DayKinds = new((DayKind.Strength, "strength"), (DayKind.Skills, "skills"));

    public static readonly Words<SetKind> SetKinds = new(
        (SetKind.WarmUp, "warm-up"), (SetKind.Working, "working"), (SetKind.Hold, "hold"), (SetKind.Share, "share"),
        (SetKind.HeldShare, "held-share"));

    public static readonly Words<Side> Sides = new((Side.Left, "left"), (Side.Right, "right"));

    public static readonly Words<AwayFor> ReasonsAway = new(
        (AwayFor.Holiday, "holiday"), (AwayFor.Illness, "illness"), (AwayFor.Other, "other"));

    public static readonly Words<LengthUnit> Lengths = new((LengthUnit.Centimetre, "cm"), (LengthUnit.Inch, "in"));

    public static readonly Words<FormulaSex> FormulaSexes = new((FormulaSex.Female, "female"), (FormulaSex.Male, "male"));

    public static readonly Words<DailyActivity> Activities = new(
        (DailyActivity.Light, "light"), (DailyActivity.Active, "active"), (DailyActivity.Vigorous, "vigorous"));

    public static readonly Words<Soreness> Sorenesses = new(
        (Soreness.None, "none"), (Soreness.Some, "some"), (Soreness.Much, "much"));

    public static readonly Words<Motion> Motions = new(
        (Motion.Squat, "squat"),
        (Motion.Hinge, "hinge"),
        (Motion.HorizontalPull, "horizontal-pull"),
        (Motion.HorizontalPush, "horizontal-push"),
        (Motion.VerticalPull, "vertical-pull"),
        (Motion.VerticalPush, "vertical-push"),
        (Motion.ElbowFlexion, "elbow-flexion"),
        (Motion.ElbowExtension, "elbow-extension"),
        (Motion.CoreBrace, "core-brace"),
        (Motion.SingleLeg, "single-leg"),
        (Motion.Preparation, "preparation"));
}

/// <summary>One closed list and its words.</summary>
internal sealed class Words<T>(params (T Value, string Word)[] pairs)
    where T : struct, Enum
{
    // Two lists and no dictionary: they are short, and a dictionary of each enum is much code in the native program.
    private readonly T[] values = [.. pairs.Select(p => p.Value)];
    private readonly string[] words = [.. pairs.Select(p => p.Word)];

    /// <summary>The word for a value.</summary>
    public BsonValue Of(T value) => words[Array.IndexOf(values, value)];

    /// <summary>The value a word stands for.</summary>
    /// <exception cref="ArgumentException">No value has that word.</exception>
    public T Of(string word) => Array.IndexOf(words, word) is >= 0 and var at ? values[at] : throw new ArgumentException($"an unknown word, {word}", nameof(word));

    /// <summary>The value a field's word stands for.</summary>
    /// <exception cref="InvalidDataException">No value has that word.</exception>
    public T Read(BsonDocument document, string name) => Array.IndexOf(words, document.Text(name)) is >= 0 and var at
        ? values[at]
        : throw new InvalidDataException($"the field '{name}' holds an unknown word");
}
