using RackSide.Training.History;

namespace RackSide.Training.Racks;

/// <summary>What is told of a lifter; each may be told on another rack, and the later word on each counts.</summary>
[Flags]
public enum LifterFields
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The name.</summary>
    Name = 1,

    /// <summary>The unit.</summary>
    Unit = 2,

    /// <summary>When the set-up was answered.</summary>
    Joined = 4,

    /// <summary>Whether the advice was read.</summary>
    CautionsRead = 8,

    /// <summary>Whether head-down work is replaced.</summary>
    AvoidInverted = 16,

    /// <summary>What proves the PIN.</summary>
    Pin = 32,

    /// <summary>The plan chosen.</summary>
    Plan = 64,

    /// <summary>The screen's look.</summary>
    Look = 128,

    /// <summary>What was told for food, water and sleep.</summary>
    Body = 256,

    /// <summary>All of it.</summary>
    All = 511,
}

/// <summary>Which fields differ, and taking some of them over.</summary>
public static class LifterFieldsOf
{
    /// <summary>Each field by itself.</summary>
    public static IReadOnlyList<LifterFields> Each { get; } =
        [.. Enumerable.Range(0, 9).Select(bit => (LifterFields)(1 << bit))];

    /// <summary>What was told anew; everything of somebody who was not here.</summary>
    public static LifterFields Told(Lifter? before, Lifter after) => before is null ? LifterFields.All :
        If(before.Name != after.Name, LifterFields.Name)
        | If(before.Unit != after.Unit, LifterFields.Unit)
        | If(before.Joined != after.Joined, LifterFields.Joined)
        | If(before.CautionsRead != after.CautionsRead, LifterFields.CautionsRead)
        | If(before.AvoidInverted != after.AvoidInverted, LifterFields.AvoidInverted)
        | If(before.Pin != after.Pin, LifterFields.Pin)
        | If(before.Plan != after.Plan, LifterFields.Plan)
        | If(before.Look != after.Look, LifterFields.Look)
        | If(before.Body != after.Body, LifterFields.Body);

    /// <summary>One lifter with some fields of another.</summary>
    public static Lifter With(this Lifter lifter, Lifter other, LifterFields which) => lifter with
    {
        Name = which.HasFlag(LifterFields.Name) ? other.Name : lifter.Name,
        Unit = which.HasFlag(LifterFields.Unit) ? other.Unit : lifter.Unit,
        Joined = which.HasFlag(LifterFields.Joined) ? other.Joined : lifter.Joined,
        CautionsRead = which.HasFlag(LifterFields.CautionsRead) ? other.CautionsRead : lifter.CautionsRead,
        AvoidInverted = which.HasFlag(LifterFields.AvoidInverted) ? other.AvoidInverted : lifter.AvoidInverted,
        Pin = which.HasFlag(LifterFields.Pin) ? other.Pin : lifter.Pin,
        Plan = which.HasFlag(LifterFields.Plan) ? other.Plan : lifter.Plan,
        Look = which.HasFlag(LifterFields.Look) ? other.Look : lifter.Look,
        Body = which.HasFlag(LifterFields.Body) ? other.Body : lifter.Body,
    };

    private static LifterFields If(bool differs, LifterFields field) => differs ? field : LifterFields.None;
}
