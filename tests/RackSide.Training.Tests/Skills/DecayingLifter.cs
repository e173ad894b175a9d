namespace RackSide.Training.Tests.Skills;

/// <summary>
/// A lifter who tires: each set costs a share of what the body has, the more the nearer it goes to the limit, and a
/// minute of rest gives a share of that back. Going to the limit in every set, the reps decay from set to set. The bend
/// says how much less a set costs that stays away from the limit: 1 not at all, 4 very much. The model is ours, no source.
/// </summary>
internal sealed class DecayingLifter(int most, double cost, double kept, double bend)
{
    private double tired;

    public int Capacity => Math.Max(1, (int)(most * (1 - tired)));

    /// <summary>Tries a set; gives the reps done.</summary>
    public int Try(int asked)
    {
        var (capacity, done) = (Capacity, Math.Min(asked, Capacity));
        tired = Math.Min(0.95, (tired + (cost * Math.Pow((double)done / capacity, bend))) * kept);
        return done;
    }
}
