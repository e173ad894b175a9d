namespace RackSide.Training.Loading;

/// <summary>What a plan costs, compared in this order: plates handled, plates on, deviation.</summary>
/// <param name="Plates">Plates handled in the upper half, plates on in the lower.</param>
/// <param name="Deviation">As the job reckons it.</param>
internal readonly record struct PlanCost(long Plates, long Deviation)
{
    private const int Half = 32;

    /// <summary>A plan that cannot be.</summary>
    public static PlanCost Never { get; } = new(long.MaxValue, 0);

    /// <summary>Whether there is such a plan.</summary>
    public bool CanBe => Plates != long.MaxValue;

    /// <summary>Plates handled.</summary>
    public int Handled => (int)(Plates >> Half);

    /// <summary>Plates on, added up over the sets.</summary>
    public int On => (int)(Plates & uint.MaxValue);

    /// <summary>A cost of plates alone.</summary>
    public static PlanCost Of(int handled, int on) => new(((long)handled << Half) + on, 0);

    /// <summary>Both, where both can be.</summary>
    public static PlanCost operator +(PlanCost a, PlanCost b) => new(a.Plates + b.Plates, a.Deviation + b.Deviation);

    /// <summary>Whether a plan is better.</summary>
    public static bool operator <(PlanCost a, PlanCost b) => a.Plates < b.Plates || (a.Plates == b.Plates && a.Deviation < b.Deviation);

    /// <summary>Whether a plan is worse.</summary>
    public static bool operator >(PlanCost a, PlanCost b) => b < a;
}
