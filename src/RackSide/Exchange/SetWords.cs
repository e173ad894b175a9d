using RackSide.Training.History;

namespace RackSide.Exchange;

/// <summary>The words for sets in our tables; the record's own, where it has them.</summary>
internal static class SetWords
{
    /// <summary>The word in the column for form.</summary>
    public const string Slipped = "slipped";

    /// <summary>The word for what a set was for.</summary>
    public static string Of(SetKind kind) => kind switch
    {
        SetKind.WarmUp => "warm-up",
        SetKind.Hold => "hold",
        SetKind.Share => "share",
        SetKind.HeldShare => "held-share",
        _ => "working",
    };

    /// <summary>The word for a side; nothing for none.</summary>
    public static string Of(Side? side) => side switch { Side.Left => "left", Side.Right => "right", _ => "" };
}
