namespace RackSide.Pages.SetUps;

/// <summary>What a key led to.</summary>
/// <param name="State">The state after it.</param>
/// <param name="Said">One sentence about it, or null.</param>
public readonly record struct SetUpTurn(SetUpState State, string? Said = null)
{
    /// <summary>A key that changed nothing, told by one sentence.</summary>
    public static SetUpTurn Refused(SetUpState state, string why = Notice.DeadKey) => new(state, why);
}
