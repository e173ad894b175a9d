using System.Diagnostics;
using NodaTime;

namespace RackSide.Training.Sessions;

/// <summary>What ENTER would write of a running hold.</summary>
public static class HoldInHand
{
    /// <summary>The seconds asked for; of seconds in all, those that are left.</summary>
    public static int Target(Session s) => s.Place.Current switch
    {
        HoldItem hold => hold.Target,
        AccumulateItem time => time.Total - s.Place.Held(time.Slot),
        _ => throw new UnreachableException(),
    };

    /// <summary>
    /// The seconds left before the target at which a head-down hold says to come down, so that it is never left by falling.
    /// Common practice, no source.
    /// </summary>
    public const int InHand = 5;

    /// <summary>Whether the head is below the heart in the hold in hand.</summary>
    public static bool IsHeadDown(Session s) => s.Place.Current is SlotItem item && s.Setting.Catalogue.Find(item.Asked.Exercise)?.Inverted == true;

    /// <summary>Time held so far; below zero during the lead-in; null while ready.</summary>
    public static Duration? Elapsed(Session s, Holding p) => p.Started is { } started ? s.Now - started - s.Setting.LeadIn : null;

    /// <summary>
    /// The seconds ENTER would write: from the target on, the target; before it, whole seconds less the time it took to
    /// reach the key. Null while ready or in the lead-in.
    /// </summary>
    public static int? Seconds(Session s, Holding p) => Elapsed(s, p) switch
    {
        null => null,
        { } past when past < Duration.Zero => null,
        { } past when past >= Duration.FromSeconds(Target(s)) => Target(s),
        { } past => Math.Max(0, (int)Math.Floor((past - s.Setting.Reach).TotalSeconds)),
    };
}
