using NodaTime;

namespace RackSide.Training.History;

/// <summary>The bar is shared with another lifter's session from here on.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
/// <param name="With">The other's session, which says the same of this one.</param>
public sealed record BarShared(FactId Id, Instant At, FactId With) : Fact(Id, At);

/// <summary>The lifter left the shared bar; the session may go on alone.</summary>
/// <param name="Id">Its identity.</param>
/// <param name="At">When.</param>
public sealed record BarLeft(FactId Id, Instant At) : Fact(Id, At);
